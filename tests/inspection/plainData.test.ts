import { expect, test } from "vitest";
import { merged, valueAt, withValueAt } from "../../src/inspection/plainData.ts";

test("a value is found at its dotted name, or nothing is", () => {
  const data = { screw: { lead: 4 }, list: [1] };
  expect(valueAt(data, "screw.lead")).toBe(4);
  expect(valueAt(data, "screw.lead.more")).toBeUndefined();
  expect(valueAt(data, "nut.kind")).toBeUndefined();
  expect(valueAt(data, "constructor.name")).toBeUndefined();
});

test("a value is put at its dotted name, in a copy", () => {
  const data = { screw: { lead: 4 } };
  expect(withValueAt(data, "screw.starts", 2)).toEqual({ screw: { lead: 4, starts: 2 } });
  expect(withValueAt(data, "nut.kind", "closing")).toEqual({ screw: { lead: 4 }, nut: { kind: "closing" } });
  expect(withValueAt({ nut: "a name" }, "nut.kind", "closing")).toEqual({ nut: { kind: "closing" } });
  expect(data).toEqual({ screw: { lead: 4 } });
});

test("what is merged stands part by part, and lists whole", () => {
  expect(merged({ a: { b: 1, c: [1, 2] }, d: 1 }, { a: { c: [3] }, e: 2 })).toEqual({
    a: { b: 1, c: [3] },
    d: 1,
    e: 2,
  });
});
