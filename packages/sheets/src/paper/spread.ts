/**
 * Places along a line moved as little as need be so that neighbours are at least `gap` apart and all lie between `least` and `most`. The places
 * must rise, and there must be room for all of them. Groups that push one another share the way (pool adjacent violators).
 */
export function spreadApart(places: readonly number[], gap: number, least: number, most: number): number[] {
	interface Group {
		readonly sum: number;
		readonly count: number;
	}
	const groups: Group[] = [];
	// Without the gaps before them, neighbours need only rise.
	const wished = places.map((place, i) => place - i * gap);
	for (const wish of wished) {
		let group: Group = { sum: wish, count: 1 };
		for (
			let last = groups.at(-1);
			last !== undefined && last.sum / last.count > group.sum / group.count;
			last = groups.at(-1)
		) {
			groups.pop();
			group = { sum: last.sum + group.sum, count: last.count + group.count };
		}
		groups.push(group);
	}
	const room = most - gap * (places.length - 1);
	return groups
		.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
		.map((place, i) => Math.min(Math.max(place, least), Math.max(room, least)) + i * gap);
}
