/** Joins segments that share ends into paths, each as the row of its ends. A closed path repeats its first end. */
export function joinedPaths(
  segments: readonly (readonly [number, number])[],
): readonly (readonly number[])[] {
  const at = new Map<number, number[]>();
  segments.forEach((segment, i) => {
    for (const end of segment) {
      at.set(end, [...(at.get(end) ?? []), i]);
    }
  });
  const used = new Set<number>();
  const walk = (from: number): number[] => {
    const path = [from];
    for (let end = from; ; ) {
      const next = at.get(end)?.find((i) => !used.has(i));
      const segment = next === undefined ? undefined : segments[next];
      if (next === undefined || segment === undefined) {
        return path;
      }
      used.add(next);
      end = segment[0] === end ? segment[1] : segment[0];
      path.push(end);
    }
  };
  // Loose ends first: begun in its middle, an open path would fall into two.
  const loose = [...at].filter(([, touching]) => touching.length === 1).map(([end]) => end);
  return [...loose, ...at.keys()].map(walk).filter((path) => path.length > 1);
}
