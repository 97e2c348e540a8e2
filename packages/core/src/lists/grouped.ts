/**
 * Things by name: a group for each name, in the order in which the names first come, and in each group the order of the
 * whole.
 *
 * @param things  in any order
 * @param nameOf  what a thing is grouped by; names are the same when `Map` holds them for the same
 * @example [...grouped(['C1', 'D1', 'C2'], (note) => note[0])].map(([name, notes]) => `${name} ${notes.length}`).join()  // = C 2,D 1
 */
export function grouped<Thing, Name>(
  things: Iterable<Thing>,
  nameOf: (thing: Thing) => Name,
): Map<Name, Thing[]> {
  const groups = new Map<Name, Thing[]>();
  for (const thing of things) addToGroup(groups, nameOf(thing), thing);
  return groups;
}

/** Puts a thing at the end of its group, and begins the group where there is none. For a loop that does more than group. */
export function addToGroup<Name, Thing>(groups: Map<Name, Thing[]>, name: Name, thing: Thing): void {
  const group = groups.get(name);
  if (group === undefined) groups.set(name, [thing]);
  else group.push(thing);
}
