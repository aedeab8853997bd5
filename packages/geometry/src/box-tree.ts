/** Boxes (mm) in four runs: least x, least y, greatest x, greatest y. */
export interface BoxTree {
	readonly count: number;
	/** Leaves first, then each level above, root last; four numbers a box. */
	readonly boxes: Float64Array;
	/** Index of the first box of each level; the last level is the root alone. */
	readonly levels: readonly number[];
}

export type BoxWriter = (item: number, boxes: Float64Array, offset: number) => void;

/**
 * A tree of boxes over items in the order in which they come: neighbours along a wall chain or a path lie close together,
 * so no sorting is needed. Branches of two, O(n) to build.
 */
export function boxTree(count: number, write: BoxWriter): BoxTree {
	const levels = [0];
	let total = count;
	for (let size = count; size > 1; ) {
		levels.push(total);
		size = (size + 1) >> 1;
		total += size;
	}
	const boxes = new Float64Array(4 * total);
	for (let item = 0; item < count; item++) write(item, boxes, 4 * item);
	for (let level = 1; level < levels.length; level++) {
		const below = levels[level - 1] as number;
		const from = levels[level] as number;
		const until = levels[level + 1] ?? total;
		for (let box = from; box < until; box++) {
			const left = below + 2 * (box - from);
			join(boxes, box, left, left + 1 < from ? left + 1 : left);
		}
	}
	return { count, boxes, levels };
}

function join(boxes: Float64Array, into: number, a: number, b: number): void {
	for (let side = 0; side < 4; side++) {
		const p = boxes[4 * a + side] as number;
		const q = boxes[4 * b + side] as number;
		boxes[4 * into + side] = side < 2 ? Math.min(p, q) : Math.max(p, q);
	}
}

/** Squared gap between a box of the tree and the box at `offset` of `others`; 0 where they touch. */
function gapSquared(boxes: Float64Array, box: number, others: Float64Array, offset: number): number {
	const b = 4 * box;
	const dx = Math.max(
		(boxes[b] as number) - (others[offset + 2] as number),
		(others[offset] as number) - (boxes[b + 2] as number),
		0,
	);
	const dy = Math.max(
		(boxes[b + 1] as number) - (others[offset + 3] as number),
		(others[offset + 1] as number) - (boxes[b + 3] as number),
		0,
	);
	return dx * dx + dy * dy;
}

/**
 * Visits, in order, every item of the tree whose box lies within `reach()` mm of the box at `offset` of `others`.
 * `reach` is asked anew at each box, so that a search for the nearest narrows as it goes; `visit` is given the item.
 */
export function visitWithin(
	tree: BoxTree,
	others: Float64Array,
	offset: number,
	reach: () => number,
	visit: (item: number) => void,
): void {
	const descend = (level: number, box: number): void => {
		const limit = reach();
		if (gapSquared(tree.boxes, box, others, offset) > limit * limit) return;
		if (level === 0) {
			visit(box);
			return;
		}
		const below = tree.levels[level - 1] as number;
		const from = tree.levels[level] as number;
		const left = below + 2 * (box - from);
		descend(level - 1, left);
		if (left + 1 < from) descend(level - 1, left + 1);
	};
	const top = tree.levels.length - 1;
	if (tree.count > 0) descend(top, tree.levels[top] as number);
}
