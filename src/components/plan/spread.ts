/**
 * Moves labels apart along a line so that none stands closer to the next than `gap`, each as near to its own place as that allows.
 * @param places - wanted places, in any order
 * @returns the places to use, in the order given, within `from` to `to` where they fit
 */
export function spread(places: readonly number[], gap: number, from: number, to: number): number[] {
  const order = places.map((place, index) => ({ place, index })).sort((a, b) => a.place - b.place);
  // Clusters of labels that touch are centred on the mean of the places they would have, then merged until none touch.
  const clusters = order.map(({ place }, position) => ({ first: position, count: 1, sum: place }));
  const start = (cluster: (typeof clusters)[number]) => {
    const length = (cluster.count - 1) * gap;
    const middle = cluster.sum / cluster.count;
    return Math.max(from, Math.min(middle - length / 2, to - length));
  };
  for (let index = 1; index < clusters.length; ) {
    const before = clusters[index - 1] as (typeof clusters)[number];
    const cluster = clusters[index] as (typeof clusters)[number];
    if (start(cluster) - (start(before) + (before.count - 1) * gap) >= gap) {
      index += 1;
      continue;
    }
    clusters.splice(index - 1, 2, { first: before.first, count: before.count + cluster.count, sum: before.sum + cluster.sum });
    index = Math.max(1, index - 1);
  }
  const used = new Array<number>(places.length);
  for (const cluster of clusters)
    for (let offset = 0; offset < cluster.count; offset += 1)
      used[(order[cluster.first + offset] as { index: number }).index] = start(cluster) + offset * gap;
  return used;
}
