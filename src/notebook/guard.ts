/** Signals at which a program is asked to end. */
const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

const pending = new Set<() => void>();

function endAll(): void {
  for (const end of [...pending]) end();
  pending.clear();
}

function onSignal(signal: NodeJS.Signals): void {
  endAll();
  stopListening();
  // With no other listener left the signal would have ended this process: let it.
  if (process.listenerCount(signal) === 0) process.kill(process.pid, signal);
}

function stopListening(): void {
  process.off("exit", endAll);
  for (const signal of signals) process.off(signal, onSignal);
}

/**
 * Runs a clean-up when this process ends or is asked to end, unless it was called off before.
 *
 * @param end  clean-up without waiting: nothing asynchronous runs any more at that time
 * @returns calls the clean-up off
 */
export function atExit(end: () => void): () => void {
  if (pending.size === 0) {
    process.on("exit", endAll);
    for (const signal of signals) process.on(signal, onSignal);
  }
  pending.add(end);
  return () => {
    pending.delete(end);
    if (pending.size === 0) stopListening();
  };
}
