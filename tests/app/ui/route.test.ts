import { describe, expect, it } from "vitest";
import { hashOf, type Route, routeOf } from "../../../src/app/ui/route.ts";

describe("the address", () => {
  it.each<Route>([
    { at: "start" },
    { at: "new" },
    { at: "help" },
    { at: "help", topic: "tight-spot" },
    { at: "inspection", id: "a/b c" },
    { at: "inspection", id: "a", survey: "after #2" },
  ])("leads back to where it was made for: %o", (route) => {
    expect(routeOf(hashOf(route))).toEqual(route);
  });

  it("leads to help with or without a slash before it", () => {
    expect(routeOf("#help/limit")).toEqual({ at: "help", topic: "limit" });
  });
});
