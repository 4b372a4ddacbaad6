type Fields = Readonly<Record<string, unknown>>;

/**
 * An entry as it is written now. Before version 3 entries had no author: the device that is named in
 * the id stands for it; and a run had its number in `run`, its car in `car`, its conditions in words.
 */
export function broughtForward(entry: Fields): Fields {
  if ("author" in entry) return entry;
  const [author] = typeof entry.id === "string" ? entry.id.split("-") : [""];
  return entry.kind === "run" ? { ...runNow(entry), author } : { ...entry, author };
}

function runNow({ run, car, conditions, ...rest }: Fields): Fields {
  return {
    ...rest,
    ...(run !== undefined && { runNumber: run }),
    ...(car !== undefined && { carNumber: car }),
    ...(conditions !== undefined && conditions !== "" && { conditions: inGroup(conditions) }),
  };
}

const inGroup = (conditions: unknown): unknown =>
  typeof conditions === "string" ? { words: conditions } : conditions;
