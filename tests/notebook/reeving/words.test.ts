import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawingSvg } from "../../../src/notebook/reeving/drawing-svg.js";
import { reevingDrawing } from "../../../src/notebook/reeving/reeving-drawing.js";
import { textWidth } from "../../../src/notebook/reeving/shapes.js";
import { stationTable } from "../../../src/notebook/reeving/station-table.js";
import { wrapped } from "../../../src/notebook/reeving/wrapped.js";
import { ReevingError, ValueError } from "../../../src/quantity/errors.js";
import { figures, printForce } from "../../../src/quantity/print.js";
import { prepareJoined } from "../../../src/reeving/joined-lines.js";
import { type Line, prepareLine } from "../../../src/reeving/line.js";
import { tackle } from "../../../src/reeving/tackle.js";
import { cleat, limp, ring, seed, sheave, stiff } from "../../reeving/builders.js";
import { everyArrangement, labelsOf, nameOf, textsOf } from "./reading.js";

const four = {
  kind: "tackle" as const,
  name: "boom tackle",
  reeving: tackle({ parts: 4, hauledFrom: "fixed", turn: sheave }),
};
const line: Line = {
  rope: stiff,
  stations: [four, { ...sheave, name: "floor block", wrapAngle: 2 }, { ...ring, name: "ring at the rail" }],
};

describe("the words of a drawing", () => {
  it("give load, tension behind each station, loss and hand force as the solver has them", () => {
    const { state } = prepareLine(line);
    for (const arrangement of everyArrangement({ line, load: 900 })) {
      const labels = labelsOf(arrangement);
      const strips = [labels.slice(0, 5), labels.slice(5)];
      (["hauling", "easing"] as const).forEach((direction, strip) => {
        const { stations, handForce } = state(900, direction);
        const found = strips[strip]!;
        expect(nameOf(found[0]!)).toBe(`load ${bound(printForce(900))}`);
        expect(nameOf(found[4]!)).toBe(`hand ${bound(printForce(handForce))}`);
        stations.forEach(({ name, handTension, loss }, index) => {
          const words = found[index + 1]!.lines.map(({ text }) => text)
            .join(" ")
            .replaceAll("\u00a0", " ");
          expect(words).toContain(name);
          expect(words).toContain(`${figures(handTension)} N after it`);
          expect(words).toContain(`loses ${figures(loss)} N`);
        });
      });
    }
  });

  it("count losses as the hand feels them: the load shared out, and the losses, make the hand force", () => {
    const { state, velocityRatio } = prepareLine(line);
    for (const [direction, sign] of [
      ["hauling", 1],
      ["easing", -1],
    ] as const) {
      const { stations, handForce } = state(900, direction);
      const losses = stations.reduce((sum, { loss }) => sum + loss, 0);
      expect(900 / velocityRatio + sign * losses).toBeCloseTo(handForce, 8);
    }
  });

  it("say when a line does not go out by itself, and give no loss for what does not move", () => {
    const held: Line = {
      rope: limp,
      stations: [
        { ...ring, name: "ring" },
        { ...cleat, name: "jaw" },
      ],
    };
    for (const arrangement of everyArrangement({ line: held, load: 100 })) {
      const words = textsOf(arrangement).flatMap(({ lines }) => lines.map(({ text }) => text));
      expect(words.join(" ")).toContain("the line does not go out by itself");
      expect(words.filter((text) => text.startsWith("loses"))).toHaveLength(2);
    }
    expect(reevingDrawing({ line: held, load: 100 }).description).toMatch(
      /hand 0 N \(0 kgf\), and the line does not go out by itself\.$/u,
    );
  });

  it("take names for the two ends", () => {
    const drawing = reevingDrawing({ line, load: 900, words: { load: "boom", hand: "crew" } });
    expect(drawing.description).toMatch(
      /^A line from the boom of 900 N \(92 kgf\) to the crew\. Hauling: after boom tackle/u,
    );
    for (const arrangement of drawing.arrangements) {
      const names = labelsOf(arrangement).map(nameOf);
      expect(names.filter((name) => name.startsWith("boom 900"))).toHaveLength(2);
      expect(names.filter((name) => name.startsWith("crew "))).toHaveLength(2);
    }
  });

  it("follow a line of several ropes", () => {
    const pieces: Line[] = [
      { rope: limp, stations: [{ ...sheave, name: "masthead" }] },
      { rope: stiff, stations: [{ ...sheave, name: "mast foot", wrapAngle: 1.5 }] },
    ];
    const { hauling } = prepareJoined(pieces).handForces(300);
    expect(reevingDrawing({ line: pieces, load: 300 }).description).toContain(`hand ${printForce(hauling)}`);
  });

  it("are refused together with a line that the solver refuses", () => {
    expect(() => reevingDrawing({ line: { rope: limp, stations: [sheave, sheave] }, load: 1 })).toThrow(ReevingError);
    expect(() => reevingDrawing({ line, load: Number.NaN })).toThrow(ValueError);
    expect(() => reevingDrawing({ line: [], load: 1 })).toThrow(ValueError);
  });
});

const bound = (text: string) => text.replaceAll(/(?<=\d) (?=N|kgf)/gu, "\u00a0");

describe("lines of text", () => {
  it("are not wider than their room, lose no word, and keep a number with its unit", () => {
    const words = fc.array(fc.constantFrom("ratchet", "at", "the", "rail", "12 N", "3 m", "mast-foot"), {
      minLength: 1,
      maxLength: 9,
    });
    fc.assert(
      fc.property(words, fc.integer({ min: 80, max: 300 }), (list, room) => {
        const lines = wrapped({ text: list.join(" "), role: "ink" }, room);
        for (const one of lines) {
          expect(textWidth(one)).toBeLessThanOrEqual(room);
          expect(one.text).not.toMatch(/^[Nm]\b(?!-)|\d$/u);
        }
        expect(
          lines
            .map(({ text }) => text)
            .join(" ")
            .replaceAll("\u00a0", " "),
        ).toBe(list.join(" "));
      }),
      seed,
    );
  });
});

describe("a drawing as SVG", () => {
  const hostile = `<script>"&'</script>\u0007 ]]>`;
  const svg = (width: number, name = hostile) =>
    drawingSvg(
      reevingDrawing({ line: { rope: limp, stations: [{ ...ring, name }] }, load: 100, words: { load: name } }),
      {
        width,
        title: name,
        altText: name,
      },
    );

  it("lets no name be read as markup", () => {
    for (const width of [360, 900]) {
      expect(svg(width)).not.toContain("<script");
      expect(svg(width)).not.toContain("\u0007");
      expect(svg(width)).toContain("&lt;script&gt;");
      // Every element is one of its own.
      const elements = new Set([...svg(width).matchAll(/<([^\s/>]+)/gu)].map(([, element]) => element));
      expect([...elements].sort()).toEqual(["circle", "desc", "path", "polygon", "polyline", "svg", "text", "title"]);
    }
  });

  it("survives names of any length and script", () => {
    for (const name of ["", " ", "w".repeat(5000), "滑車".repeat(40), "a b ".repeat(300), "\u{1f6a9}".repeat(50)])
      for (const width of [360, 900]) expect(svg(width, name)).not.toMatch(/NaN|Infinity|undefined/u);
  });

  it("takes the widest arrangement that fits", () => {
    expect(svg(1200)).toContain('viewBox="0 0 900 ');
    expect(svg(899)).toContain('viewBox="0 0 720 ');
    expect(svg(719)).toContain('viewBox="0 0 360 ');
    expect(svg(200)).toContain('viewBox="0 0 360 ');
  });

  it("is read out as an image with a title and what is drawn, in colours of the page", () => {
    expect(svg(900, "fairlead")).toMatch(
      /role="img"[\s\S]*<title>fairlead<\/title>\n<desc>fairlead A line from the fairlead of 100 N/u,
    );
    expect(svg(900).replaceAll(/var\(--\w+, #[0-9a-f]{6}\)/gu, "")).not.toMatch(/#[0-9a-f]{3}/u);
  });
});

describe("the table of a drawing", () => {
  it("has a row for the load, each station, every part and block of a tackle, and the hand", () => {
    const { columns, rows } = stationTable({ line, load: 900 });
    for (const row of rows) expect(row).toHaveLength(columns.length);
    expect(rows.map(([name]) => name)).toEqual([
      "load",
      "boom tackle",
      ...[1, 2, 3, 4, 5].map((part) => `boom tackle: part ${part}`),
      "boom tackle: fixed",
      "boom tackle: moving",
      "floor block",
      "ring at the rail",
      "hand",
    ]);
    const { hauling, easing } = prepareLine(line).handForces(900);
    expect(rows.at(-1)!.slice(1, 3)).toEqual([figures(hauling), figures(easing)]);
    expect(rows.find(([name]) => name === "boom tackle: moving")!.at(-1)).toBe("900");
  });
});
