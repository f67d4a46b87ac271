import { describe, expect, it } from "vitest";
import { inOneLine } from "../../src/inspection/problem.ts";
import { fileKindOf } from "../../src/intake/fileKind.ts";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("the kind of a file", () => {
  it.each([
    ["an inspection", '{"format": "tightspot-inspection"}', "inspection"],
    ["an inspection after a byte-order mark and blanks", '\uFEFF\n  {"format": 1}', "inspection"],
    ["an inspection that breaks off", '{"format": "tightspot-insp', "inspection"],
    ["a list of objects in JSON", '[ {"a": 1} ]', "inspection"],
    ["JSON that holds nothing", "null", "inspection"],
    ["a log", "Position (mm);Backlash (mm)\n0;0,21\n", "log"],
    ["a log with a heading in brackets", "[mm];Backlash\n0;0,21\n", "log"],
    ["a log with quoted headings", '"Position","Backlash"\n"0","0.21"\n', "log"],
  ] as const)("is told by what is in it: %s", (_, text, kind) => {
    for (const content of [text, bytes(text)]) {
      const found = fileKindOf(content);
      expect(found.ok && found.value.kind).toBe(kind);
    }
  });

  it("is told of UTF-16 too, with the text as it reads", () => {
    const found = fileKindOf(Buffer.from('\uFEFF{"format": "x"}', "utf16le"));
    expect(found).toEqual({ ok: true, value: { kind: "inspection", text: '{"format": "x"}' } });
  });

  it.each([
    ["nothing", new Uint8Array(), /^there is nothing in it/],
    ["a picture", Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13, 1, 2, 3, 4), /^this is not a text/],
  ] as const)("is none for %s", (_, content, reason) => {
    const found = fileKindOf(content);
    expect(found.ok ? "" : inOneLine(found.problem)).toMatch(reason);
  });
});
