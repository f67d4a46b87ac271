/** What there is help on, in the order in which it is read, each with the question that it answers. */
export const TOPICS = [
  ["backlash", "What is backlash, or lost motion?"],
  ["tight-spot", "What is the tight spot?"],
  ["uniform-uneven", "What do uniform and uneven mean?"],
  ["end-float", "What is end float?"],
  ["running-clearance", "What is running clearance?"],
  ["take-up", "What is take-up?"],
  ["measuring", "How is it measured?"],
  ["limit", "How is a limit chosen?"],
  ["method", "How is the verdict worked out?"],
] as const;

export type Topic = (typeof TOPICS)[number][0];

export function isTopic(name: string): name is Topic {
  return TOPICS.some(([topic]) => topic === name);
}

export function questionOf(topic: Topic): string {
  return TOPICS.find(([each]) => each === topic)?.[1] ?? topic;
}
