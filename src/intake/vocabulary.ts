/** What a column may be taken as. */
export type Role =
  | "position"
  | "backlash"
  | "advancing"
  | "retracting"
  | "target"
  | "reading"
  | "direction"
  | "run"
  | "note"
  | "time"
  | "date"
  | "excluded"
  | "other keys";

/** What a heading's words mean. */
export interface Meaning {
  readonly role: Role;
  /** How plainly the words say it, 0 most: of columns for one role the plainest are taken. */
  readonly rank: number;
  readonly words: string;
}

/** What people call the columns, the plain words before those that may mean something else. */
const VOCABULARY: readonly (readonly [Role, rank: number, words: string])[] = [
  ["position", 0, "position, positions, pos, location, coordinate, coord, coordinates"],
  ["position", 0, "x position, y position, z position, x pos, y pos, z pos"],
  ["position", 0, "posizione, posicion, lage, stelle, messstelle, schlittenposition"],
  ["position", 1, "x, y, z, travel, distance, place, dro, scale, weg, course, corsa, recorrido"],
  ["position", 2, "station, stn, messpunkt"],
  ["target", 0, "target, target position, nominal, nominal position, nominal pos, commanded"],
  ["target", 0, "commanded position, command position, set point, setpoint, set position, sollposition"],
  ["backlash", 0, "backlash, lash, lost motion, lost travel, play, free play, slop, looseness, sweep"],
  ["backlash", 0, "umkehrspiel, spiel, lose, totgang, axialspiel, jeu, juego, holgura, gioco"],
  ["backlash", 1, "reading, readings, measurement, measured, value, indicator, dti, dial, clearance, b"],
  ["backlash", 1, "mean backlash, average backlash, backlash mean, backlash average, backlash avg"],
  ["backlash", 1, "messwert, ablesung, mesure, lecture, medida, lectura, misura, lettura"],
  ["backlash", 2, "run, r, trial, test, repeat, rep, pass, messung"],
  ["reading", 0, "actual, actual position, true position, measured position, position read, istposition"],
  ["reading", 0, "indicated position, reached position, position reading"],
  ["advancing", 0, "advancing, advance, adv, forward, forwards, fwd, positive, plus, up, left"],
  ["advancing", 0, "clockwise, cw, vor, vorwarts, vorwaerts, hin, avance, aller, avanti"],
  ["retracting", 0, "retracting, retract, retr, ret, backward, backwards, back, reverse, rev"],
  ["retracting", 0, "return, returning, negative, minus, down, right"],
  ["retracting", 0, "counterclockwise, counter clockwise, anticlockwise, anti clockwise, ccw"],
  ["retracting", 0, "zuruck, zurueck, ruckwarts, rueckwaerts, her, recul, retour, retroceso, indietro"],
  ["direction", 0, "direction, dir, approach, richtung, sens, sentido, senso"],
  ["run", 0, "run no, run number, run nr, cycle, lauf"],
  ["note", 0, "note, notes, remark, remarks, comment, comments"],
  ["note", 0, "bemerkung, bemerkungen, notiz, anmerkung, kommentar, remarque, observaciones, nota"],
  ["time", 0, "time, timestamp, time stamp, date time, datetime, zeit, uhrzeit, heure, hora, ora"],
  ["date", 0, "date, day, datum, fecha"],
  ["excluded", 0, "excluded, struck, struck out, left out, rejected, excluded because, gestrichen"],
  ["other keys", 0, "other keys"],
];

const BY_WORDS = new Map(
  VOCABULARY.flatMap(([role, rank, list]) =>
    list.split(", ").map((words): readonly [string, Meaning] => [words, { role, rank, words }]),
  ),
);

/** Words that stand around the telling ones: `dial reading, approaching from left`. */
const FILLERS = new Set(
  (
    "reading readings indicator dial dti handwheel value measured slide table carriage saddle " +
    "approach approaching approached direction side going moving when while after the of from at on to"
  ).split(" "),
);

/** What a phrase of lower-case words without accents is known to mean. */
export function meaningOf(words: string): Meaning | undefined {
  const telling = words.split(" ").filter((word) => !FILLERS.has(word));
  const [beforeFrom = ""] = words.split(/ (?:from|along) /);
  return BY_WORDS.get(words) ?? BY_WORDS.get(telling.join(" ")) ?? BY_WORDS.get(beforeFrom);
}
