/** What the page shows: the part of the address after `#`. */
export type Route =
  | { readonly at: "start" }
  | { readonly at: "new" }
  /** Help, at a topic if one is named. */
  | { readonly at: "help"; readonly topic?: string }
  | { readonly at: "inspection"; readonly id: string; readonly survey?: string };

export function routeOf(hash: string): Route {
  const [part, id, survey] = hash.replace(/^#\/?/, "").split("/").map(decodeURIComponent);
  if (part === "new") return { at: "new" };
  if (part === "help") return { at: "help", ...(id !== undefined && { topic: id }) };
  if (part !== "inspection" || id === undefined) return { at: "start" };
  return { at: "inspection", id, ...(survey !== undefined && { survey }) };
}

export function hashOf(route: Route): string {
  if (route.at === "start") return "#/";
  if (route.at === "new") return "#/new";
  if (route.at === "help") return route.topic === undefined ? "#/help" : `#/help/${route.topic}`;
  const survey = route.survey === undefined ? "" : `/${encodeURIComponent(route.survey)}`;
  return `#/inspection/${encodeURIComponent(route.id)}${survey}`;
}
