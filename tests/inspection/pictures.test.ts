import { expect, test } from "vitest";
import {
  pictureAddress,
  picturesIn,
  withBytes,
  withoutBytes,
  withPictures,
} from "../../src/inspection/pictures.ts";

const nut = { id: "a", type: "image/jpeg", width: 1600, height: 1200, caption: "The nut" };
const screw = { id: "b", type: "image/png", width: 40, height: 30, data: "AAEC", lens: "macro" };

test("pictures are found wherever they stand, and what is none is passed over", () => {
  const data = {
    events: [
      { pictures: [nut, { sketch: 1 }, "text", null, { ...nut, width: 0 }, { ...nut, type: "text/html" }] },
    ],
    steps: { done: [{ before: [{ pictures: [screw] }] }] },
  };
  expect(picturesIn(data)).toEqual([nut, screw]);
});

test("what holds no picture stays the same object when pictures are changed; the rest keeps its keys", () => {
  const surveys = [{ readings: [{ position: 0, backlash: 0.2 }] }];
  const changed = withPictures({ surveys, events: [{ note: "x", pictures: [screw, 7] }] }, withoutBytes);
  expect(changed.surveys).toBe(surveys);
  const { data: _data, ...named } = screw;
  expect(changed.events).toEqual([{ note: "x", pictures: [named, 7] }]);
});

test("a picture that carries its bytes has an address to be shown under", () => {
  expect(pictureAddress(nut)).toBe(null);
  expect(pictureAddress(withBytes(nut, Uint8Array.of(0, 1, 2)))).toBe("data:image/jpeg;base64,AAEC");
});
