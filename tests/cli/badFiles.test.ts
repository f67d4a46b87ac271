import { chmodSync, mkdirSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { type Ended, tightspot, workshop } from "./command.ts";
import { looseNut, wornScrew } from "./inspections.ts";

const { file, path } = workshop();
const good = file("good.json", JSON.stringify(wornScrew()));
const text = JSON.stringify(wornScrew(), null, 2);
const without = (key: string): string =>
  JSON.stringify({ ...wornScrew(), slide: { ...wornScrew().slide, [key]: undefined } });

mkdirSync(path("folder"));
const noise = Uint8Array.from({ length: 4096 }, (_, index) => (index * 97) % 256);

const COMMA = /surveys\[0\]\.readings\[0\]\.backlash: is "0,11"; it must be a number/;
const BAD: readonly (readonly [string, string, RegExp])[] = [
  ["a file that is not there", path("none.json"), /there is no such file/],
  ["an empty folder", path("folder"), /no inspection and no log in this folder/],
  ["a binary file", file("noise.json", noise), /not a text/],
  ["an empty file", file("empty.json", ""), /nothing in it/],
  ["JSON that breaks off", file("cut.json", text.slice(0, 600)), /line \d+, column \d+/],
  ["JSON of another kind", file("other.json", '{"name": "x"}'), /not an inspection file/],
  ["JSON that is no object", file("null.json", "null"), /not an inspection file/],
  ["a list in JSON", file("list.json", "[1, 2]"), /not an inspection file/],
  ["a decimal comma", file("comma.json", text.replace('"backlash": 0.11', '"backlash": "0,11"')), COMMA],
  [
    "a number beyond all",
    file("beyond.json", text.replace('"lead": 4', '"lead": 1e999')),
    /too large a number/,
  ],
  ["a newer version", file("new.json", text.replace('"version": 1', '"version": 9')), /version 9, newer/],
  [
    "a slide without travel",
    file("travel.json", without("travel")),
    /slide\.travel\.from: .*travel are missing/,
  ],
  [
    "a slide without a limit",
    file("limit.json", without("backlashLimit")),
    /slide\.backlashLimit: the limit on lost motion is missing/,
  ],
  ["no surveys", file("bare.json", JSON.stringify({ ...looseNut(), surveys: [] })), /no survey in it/],
  ["no readings", file("unread.json", JSON.stringify(unread())), /no readings to assess/],
  ["a table of other things", file("paint.csv", "Name;Colour\nShed;blue\n"), /"Name", "Colour"/],
];

function unread() {
  const { surveys, ...rest } = looseNut();
  return { ...rest, surveys: surveys.map((survey) => ({ ...survey, readings: [] })) };
}

describe("files that cannot be read", () => {
  let ended: Ended;
  beforeAll(async () => {
    ended = await tightspot(["assess", "--json", ...BAD.map(([, bad]) => bad), good]);
  });

  it("end the command with 2, and the good one beside them is assessed", () => {
    expect(ended.code).toBe(2);
    expect(JSON.parse(ended.out)).toMatchObject({ file: good, verdict: "remake-screw" });
  });

  it.each(BAD)(
    "such as %s are told by name, with the reason and on a second line the cure",
    (_, bad, reason) => {
      const lines = ended.err.split("\n");
      const at = lines.findIndex((line) => line.startsWith(`tightspot: ${bad}: `));
      expect(lines[at]).toMatch(reason);
      expect(lines[at + 1]).toMatch(/^ {2}\S.*\.$/);
    },
  );

  it("are told in two lines each and nothing else", () => {
    expect(ended.err.trimEnd().split("\n")).toHaveLength(2 * BAD.length);
  });

  it.skipIf(process.getuid?.() === 0)("are told where they may not be read", async () => {
    const secret = file("secret.json", text);
    chmodSync(secret, 0);
    expect((await tightspot(["assess", secret])).err).toContain("may not be read");
  });
});
