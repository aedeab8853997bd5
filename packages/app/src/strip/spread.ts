/** Something in a row that wants to stand at a place but must not touch its neighbours. px. */
export interface Wanted {
	/** Where its middle wants to be. Items come in the order of their places. */
	readonly want: number;
	readonly half: number;
}

/**
 * The middles of items in one row, in order and at least `gap` apart, as near to where they want to be as least squares
 * can bring them (pool adjacent violators), between `low` and `high`. Null where they do not fit.
 */
export function spreadRow(items: readonly Wanted[], low: number, high: number, gap: number): number[] | null {
	if (items.length === 0) return [];
	// With every item's own width taken off, items only have to stay in order.
	const offsets: number[] = [];
	items.forEach((item, i) => {
		const before = items[i - 1];
		offsets.push(before === undefined ? item.half : (offsets[i - 1] as number) + before.half + gap + item.half);
	});
	const last = items[items.length - 1] as Wanted;
	const room = high - low - ((offsets[items.length - 1] as number) + last.half);
	if (room < 0) return null;

	const blocks: { sum: number; count: number }[] = [];
	items.forEach((item, i) => {
		blocks.push({ sum: item.want - (offsets[i] as number), count: 1 });
		for (;;) {
			const right = blocks.at(-1);
			const left = blocks.at(-2);
			if (right === undefined || left === undefined || left.sum / left.count <= right.sum / right.count) break;
			blocks.pop();
			left.sum += right.sum;
			left.count += right.count;
		}
	});
	const middles: number[] = [];
	for (const { sum, count } of blocks) {
		const mean = Math.max(low, Math.min(low + room, sum / count));
		for (let i = 0; i < count; i++) middles.push(mean + (offsets[middles.length] as number));
	}
	return middles;
}
