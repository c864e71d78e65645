/** Where in the pages we are. An identifier may hold any character. */
export type Route =
  | { page: "greens"; club?: string }
  | { page: "year"; club: string; green: string; year: number }
  | { page: "works"; club: string }
  | { page: "work"; club: string; work: string }
  | { page: "methods"; club: string; kind?: string; by?: string; definition?: string }
  | { page: "trials"; club: string }
  | { page: "consistency"; club: string }
  | { page: "observers"; club: string }
  | { page: "records"; club: string; green?: string; from?: string; to?: string; offset?: number }
  | { page: "visit"; club: string; visit: string }
  | { page: "photos"; club: string }
  | { page: "bring"; club?: string }
  | { page: "people"; club: string }
  | { page: "sessions" }
  | { page: "sign-in"; to?: string }
  | { page: "join"; token: string }
  | { page: "link"; token: string }
  | { page: "lost"; path: string };

const isoDay = /^\d{4}-\d{2}-\d{2}$/;

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

function records(club: string, query: URLSearchParams): Route {
  const route: Route = { page: "records", club };
  const green = query.get("green");
  const from = query.get("from") ?? "";
  const to = query.get("to") ?? "";
  const offset = Number(query.get("offset") ?? 0);
  if (green) route.green = green;
  if (isoDay.test(from)) route.from = from;
  if (isoDay.test(to)) route.to = to;
  if (Number.isInteger(offset) && offset > 0) route.offset = offset;
  return route;
}

const methodFields = ["kind", "by", "definition"] as const;

function methods(club: string, query: URLSearchParams): Route {
  const route: Route = { page: "methods", club };
  for (const name of methodFields) {
    const value = query.get(name);
    if (value) route[name] = value;
  }
  return route;
}

function withQuery(path: string, query: URLSearchParams): string {
  const text = query.toString();
  return path + (text ? `?${text}` : "");
}

function ofNoClub([place, token, ...rest]: string[], query: URLSearchParams): Route | undefined {
  if (rest.length > 0) return undefined;
  if (place === "sign-in" && !token) {
    // Only our own page on the green: an address must not lead elsewhere.
    return query.get("to") === "field" ? { page: "sign-in", to: "field" } : { page: "sign-in" };
  }
  if ((place === "join" || place === "link") && token) return { page: place, token: decoded(token) };
  return undefined;
}

/** Reads "#/club/greens/7/2025". */
export function parseRoute(hash: string): Route {
  const text = hash.replace(/^#?\/?/, "");
  const cut = text.indexOf("?");
  const path = cut < 0 ? text : text.slice(0, cut);
  const query = new URLSearchParams(cut < 0 ? "" : text.slice(cut + 1));
  const [club, place, first, second, ...rest] = path.split("/").filter(Boolean).map(decoded);
  // A plus that is not encoded begins no club's name: these places belong to none.
  if (text === "+") return { page: "bring" };
  if (text === "+sessions") return { page: "sessions" };
  if (text.startsWith("+")) return ofNoClub(path.slice(1).split("/"), query) ?? { page: "lost", path };
  if (!club) return { page: "greens" };
  if (rest.length === 0) {
    if ((!place || place === "greens") && !first) return { page: "greens", club };
    if (place === "greens" && first && second && /^\d{4}$/.test(second))
      return { page: "year", club, green: first, year: Number(second) };
    if (place === "works" && !second)
      return first ? { page: "work", club, work: first } : { page: "works", club };
    if (place === "methods" && !first) return methods(club, query);
    if (place === "consistency" && !first) return { page: "consistency", club };
    if (place === "observers" && !first) return { page: "observers", club };
    if (place === "photos" && !first) return { page: "photos", club };
    if (place === "bring-in" && !first) return { page: "bring", club };
    if (place === "trials" && !first) return { page: "trials", club };
    if (place === "people" && !first) return { page: "people", club };
    if (place === "records" && !second)
      return first ? { page: "visit", club, visit: first } : records(club, query);
  }
  return { page: "lost", path };
}

/** The address of a place; parseRoute reads it back. */
export function linkTo(route: Route): string {
  const to = (...parts: (string | number)[]) =>
    `#/${parts.map((part) => encodeURIComponent(part)).join("/")}`;
  switch (route.page) {
    case "greens":
      return route.club ? to(route.club, "greens") : "#/";
    case "year":
      return to(route.club, "greens", route.green, route.year);
    case "works":
      return to(route.club, "works");
    case "work":
      return to(route.club, "works", route.work);
    case "methods": {
      const query = new URLSearchParams();
      for (const name of methodFields) {
        const value = route[name];
        if (value) query.set(name, value);
      }
      return withQuery(to(route.club, "methods"), query);
    }
    case "bring": // a club is never named by a bare plus: linkTo writes that as %2B
      return route.club ? to(route.club, "bring-in") : "#/+";
    case "photos":
      return to(route.club, "photos");
    case "consistency":
      return to(route.club, "consistency");
    case "observers":
      return to(route.club, "observers");
    case "trials":
      return to(route.club, "trials");
    case "people":
      return to(route.club, "people");
    case "sessions":
      return "#/+sessions";
    case "sign-in":
      return `#/+sign-in${route.to ? `?to=${route.to}` : ""}`;
    case "join":
    case "link":
      return `#/+${route.page}/${encodeURIComponent(route.token)}`;
    case "visit":
      return to(route.club, "records", route.visit);
    case "records": {
      const query = new URLSearchParams();
      for (const name of ["green", "from", "to", "offset"] as const) {
        const value = route[name];
        if (value) query.set(name, String(value));
      }
      return withQuery(to(route.club, "records"), query);
    }
    case "lost":
      return "#/";
  }
}
