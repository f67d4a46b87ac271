import { copyFileSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Inspection } from "../../src/inspection/schema.ts";
import { tightspot, tightspotProcess, workshop } from "./command.ts";
import { looseNut, twoSurveys, wornScrew } from "./inspections.ts";

const SAMPLES = join(import.meta.dirname, "../../sample-data");
const REMAKE = "remake-screw-worn-middle-boring-mill-table.json";
const ADJUST = "adjust-nut-lathe-2-cross-slide.json";
const LEAVE = "leave-alone-drilling-table.json";
const LOG = "adjust-nut-lathe-2-cross-slide.csv";

const { path } = workshop();

/** A folder of that name with samples in it, under names that are not in the order of their wear. */
function folder(name: string, samples: Readonly<Record<string, string>>): string {
  mkdirSync(path(name), { recursive: true });
  for (const [copy, sample] of Object.entries(samples)) {
    mkdirSync(join(path(name), copy, ".."), { recursive: true });
    copyFileSync(join(SAMPLES, sample), join(path(name), copy));
  }
  return path(name);
}

const put = (at: string, inspection: Inspection): void => writeFileSync(at, JSON.stringify(inspection));

/** The lines of an overview that tell of a slide: those that end with the name of a file. */
const linesOf = (out: string): readonly string[] =>
  out.split("\n").filter((line) => /\.(json|csv)$/.test(line));
const filesOf = (out: string): readonly (string | undefined)[] =>
  linesOf(out).map((line) => line.split("/").at(-1));
const jsonOf = (out: string) =>
  out
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line));

describe("assess on a folder", () => {
  it("tells each slide in one line of words, the worst first, folders below included", async () => {
    const shop = folder("shop", { "a.json": LEAVE, "lathes/b.json": ADJUST, "mills/old/c.json": REMAKE });
    writeFileSync(join(shop, "notes.txt"), "Nothing to assess.");
    const { code, out, err } = await tightspot(["assess", shop]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(filesOf(out)).toEqual(["c.json", "b.json", "a.json"]);
    const [worst, middle, best] = linesOf(out);
    expect(worst).toMatch(/boring mill.*: Table.* remake the screw.* lost motion 0\.\d+ mm.*limit 0\.15 mm/);
    expect(middle).toMatch(/lathe no\. 2.*: Cross slide.* adjust the nut/);
    expect(best).toMatch(/Leave it alone/);
    expect(out).toMatch(/^3 slides, the worst first\n/);
    expect(out).toContain("Isolate the machine");
  });

  it("takes the latest survey that holds readings for the slide", async () => {
    const shop = folder("history", {});
    const [worn, loose] = twoSurveys().surveys;
    if (worn === undefined || loose === undefined) throw new Error("There are two surveys.");
    const surveys = [
      { ...loose, taken: "2026-05-01" },
      { ...worn, taken: "2026-04-01" },
      { ...worn, id: "prepared", taken: "2026-06-01", readings: [] },
    ];
    put(join(shop, "slide.json"), { ...twoSurveys(), surveys });
    const { out } = await tightspot(["assess", shop]);
    expect(linesOf(out)).toHaveLength(1);
    expect(out).toMatch(/djust the nut.*2026-05-01/);
    const named = await tightspot(["assess", "--survey", "worn", shop]);
    expect(named.out).toMatch(/emake the screw.*2026-04-01/);
  });

  it("gives with --json every survey, in the order of operands and of the names in each folder", async () => {
    const shop = folder("ordered", { "b.json": LEAVE, "c/a.json": ADJUST });
    put(join(shop, "a.json"), twoSurveys());
    const last = path("last.json");
    put(last, looseNut());
    const { code, out } = await tightspot(["assess", "--json", shop, last]);
    expect(code).toBe(0);
    expect(jsonOf(out).map(({ file, survey }) => [file, survey])).toEqual([
      [join(shop, "a.json"), "worn"],
      [join(shop, "a.json"), "loose"],
      [join(shop, "b.json"), "yearly-check"],
      [join(shop, "c", "a.json"), "march-check"],
      [last, "loose"],
    ]);
  });

  it("names what it cannot read with reason and cure, ends with 2, and tells the rest", async () => {
    const shop = folder("damaged", { "good.json": REMAKE, "log.csv": LOG });
    writeFileSync(join(shop, "broken.json"), '{"format": "tightspot-inspection", "version": 1, "slide"');
    const page = path("damaged.html");
    const { code, out, err } = await tightspot(["assess", "--overview", page, shop]);
    expect(code).toBe(2);
    const [reason, cure, ...more] = err.trimEnd().split("\n");
    expect(reason).toMatch(/^tightspot: .*broken\.json: line 1, column \d+/);
    expect(cure).toMatch(/^ {2}\S.*\.$/);
    expect(more).toEqual([]);
    expect(filesOf(out)).toEqual(["good.json", "log.csv"]);
    expect(out).toContain("1 file could not be read whole");
    expect(readFileSync(page, "utf8")).toMatch(/Not read, or not whole[\s\S]*broken\.json: line 1/);
  });

  it("says of an empty folder that there is nothing in it", async () => {
    const empty = folder("empty", {});
    const { code, out, err } = await tightspot(["assess", empty]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/empty: there is no inspection and no log in this folder/);
  });

  it("passes over what is hidden, and follows a link that leads back up only once", async () => {
    const shop = folder("linked", { "slide.json": LEAVE, ".kept/slide.json": REMAKE });
    symlinkSync(shop, join(shop, "again"));
    const { code, out } = await tightspot(["assess", shop]);
    expect(code).toBe(0);
    expect(filesOf(out)).toEqual(["slide.json"]);
  });

  it("keeps a slide on its line whatever its name holds", async () => {
    const shop = folder("odd", {});
    put(join(shop, "odd.json"), wornScrew({ name: "Cross\nslide\u001b[2J", machine: "<Lathe>" }));
    const page = path("odd.html");
    const { out } = await tightspot(["assess", "--overview", page, shop]);
    expect(linesOf(out)[0]).toMatch(/^<Lathe>: Cross slide \[2J /);
    expect(readFileSync(page, "utf8")).toContain("&lt;Lathe&gt;: Cross");
  });
});

describe("the overview as a page", () => {
  it("is one document without scripts, a row for each slide, the worst first", async () => {
    const shop = folder("paged", { "a.json": LEAVE, "b.json": REMAKE, "c.json": ADJUST });
    const page = path("overview.html");
    const files = ["a.json", "b.json", "c.json"].map((name) => join(shop, name));
    const { code, out } = await tightspot(["assess", "--json", "--overview", page, ...files]);
    expect(code).toBe(0);
    expect(jsonOf(out).map(({ file }) => file)).toEqual(files);
    const written = readFileSync(page, "utf8");
    expect(written).not.toMatch(/<script|<link|<img|<iframe|@import|url\(|\ssrc=|\shref=|\son\w+=/i);
    const rows = [...written.matchAll(/<tr[^>]*><td[^>]*><b>.*?<small>.*?(\/.*?)<\/small>/g)].map(
      ([, file]) => file,
    );
    expect(rows).toEqual([files[1], files[2], files[0]]);
  });

  it("says where it cannot be written", async () => {
    const shop = folder("unwritten", { "a.json": LEAVE });
    const { code, out, err } = await tightspot(["assess", "--overview", path("no/such.html"), shop]);
    expect(code).toBe(2);
    expect(filesOf(out)).toEqual(["a.json"]);
    expect(err).toContain("cannot be written");
  });
});

describe("many files", () => {
  it("give, shared out among the cores, what a few give on one, in the order given", async () => {
    const samples = [REMAKE, ADJUST, LEAVE, LOG];
    const copies = Array.from({ length: 12 }, (_, index) => {
      const sample = samples[index % samples.length] ?? LEAVE;
      return { sample, copy: `${String(index).padStart(2, "0")}/${sample}` };
    });
    const shop = folder("many", Object.fromEntries(copies.map(({ copy, sample }) => [copy, sample])));
    const together = jsonOf((await tightspotProcess(["assess", "--json", shop])).out);
    const few = jsonOf(
      (await tightspotProcess(["assess", "--json", ...samples.map((name) => join(SAMPLES, name))])).out,
    );
    expect(together).toEqual(
      copies.map(({ copy }, index) => ({ ...few[index % samples.length], file: join(shop, copy) })),
    );
  });
});
