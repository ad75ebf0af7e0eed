import { spawn } from "node:child_process";

/** Command that opens a file as a double click would, by platform. */
export function openingCommand(platform: NodeJS.Platform, path: string): readonly [string, readonly string[]] {
  if (platform === "darwin") return ["open", [path]];
  if (platform === "win32") return ["cmd", ["/c", "start", "", path]];
  return ["xdg-open", [path]];
}

/** Opens a file on this desktop; refuses when the command is not there. */
export function openOnDesktop(path: string): Promise<void> {
  const [command, args] = openingCommand(process.platform, path);
  return new Promise((opened, refused) => {
    const child = spawn(command, args, { detached: true, stdio: "ignore" });
    child.once("error", refused);
    child.once("spawn", () => {
      child.unref();
      opened();
    });
  });
}
