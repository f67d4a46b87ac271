import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { lineSplitter } from "../../../../src/app/entry/gauge/lineSplitter.ts";
import { takerOf } from "../../../../src/app/entry/gauge/takeReading.ts";

beforeEach(() => {
  vi.useFakeTimers();
});

afterEach(() => {
  vi.useRealTimers();
});

describe("what comes in from a gauge", () => {
  test("is cut at line ends of any kind, however it arrives in pieces", () => {
    const lines: string[] = [];
    const cutter = lineSplitter((line) => lines.push(line));
    for (const piece of ["\u0002+0.2", "1\r", "\n+0.22\n", "\r+0.2", "3\r\n"]) cutter.add(piece);
    expect(lines).toEqual(["+0.21", "+0.22", "+0.23"]);
  });

  test("without line ends is cut at silence", () => {
    const lines: string[] = [];
    const cutter = lineSplitter((line) => lines.push(line));
    cutter.add("+0.");
    vi.advanceTimersByTime(100);
    cutter.add("21");
    vi.advanceTimersByTime(200);
    cutter.add("+0.22");
    vi.advanceTimersByTime(200);
    expect(lines).toEqual(["+0.21", "+0.22"]);
  });

  test("is told no more once it is closed", () => {
    const lines: string[] = [];
    const cutter = lineSplitter((line) => lines.push(line));
    cutter.add("+0.21");
    cutter.close();
    vi.advanceTimersByTime(1000);
    expect(lines).toEqual([]);
  });
});

describe("a value from the gauge's button", () => {
  const listening = () => {
    const taken: string[] = [];
    const flood = vi.fn();
    return { taken, flood, taker: takerOf((value) => taken.push(value), flood) };
  };

  test("is taken once, even when the button bounces", () => {
    const { taken, flood, taker } = listening();
    taker.came("0.21");
    vi.advanceTimersByTime(50);
    taker.came("0.21");
    vi.advanceTimersByTime(500);
    expect(taken).toEqual(["0.21"]);
    vi.advanceTimersByTime(3000);
    taker.came("0.22");
    vi.advanceTimersByTime(500);
    expect(taken).toEqual(["0.21", "0.22"]);
    expect(flood).not.toHaveBeenCalled();
  });

  test("is told from a gauge that sends ten times a second, of which none is taken", () => {
    const { taken, flood, taker } = listening();
    for (let count = 0; count < 20; count++) {
      taker.came("0.21");
      vi.advanceTimersByTime(100);
    }
    expect(taken).toEqual([]);
    expect(flood).toHaveBeenCalled();
  });

  test("is told from a gauge that sends once a second, before a third is taken", () => {
    const { taken, flood, taker } = listening();
    for (let count = 0; count < 3; count++) {
      taker.came("0.21");
      vi.advanceTimersByTime(1000);
    }
    expect(taken).toEqual(["0.21", "0.21"]);
    expect(flood).toHaveBeenCalledTimes(1);
  });
});
