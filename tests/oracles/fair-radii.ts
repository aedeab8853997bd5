/** Bends in a row, as in the trade: leg i lies before bend i and leg i + 1 after it; each takes slope × radius off both. */
export interface Row {
	readonly room: readonly number[];
	readonly slope: readonly number[];
	readonly least: readonly number[];
	readonly goal: readonly number[];
}

/**
 * Fairest widest radii the slow way, straight from the definition of max–min fairness: raise all free bends together by
 * bisection until something is full; a bend is settled when it alone cannot be raised any more. Null where even the least
 * radii do not fit.
 */
export function fairRadii(row: Row): number[] | null {
	const bends = row.slope.length;
	const share = new Array<number>(bends).fill(0);
	const settled = new Array<boolean>(bends).fill(false);
	if (!fits(row, share, 1e-7)) return null;
	while (settled.includes(false)) {
		const raised = (to: number) => share.map((at, bend) => (settled[bend] ? at : to));
		let low = 0;
		let high = 1;
		if (fits(row, raised(1), 1e-9)) low = 1;
		else
			for (let halving = 0; halving < 60; halving++) {
				const middle = (low + high) / 2;
				if (fits(row, raised(middle), 1e-9)) low = middle;
				else high = middle;
			}
		raised(low).forEach((at, bend) => {
			share[bend] = at;
		});
		let any = false;
		for (let bend = 0; bend < bends; bend++) {
			if (settled[bend]) continue;
			const alone = share.map((at, other) => (other === bend ? at + 1e-6 : at));
			if (low < 1 && fits(row, alone, 1e-9)) continue;
			settled[bend] = true;
			any = true;
		}
		if (!any) throw new Error("nothing settled");
	}
	return share.map((at, bend) => radius(row, bend, at));
}

const radius = ({ least, goal }: Row, bend: number, share: number): number =>
	(least[bend] as number) + share * ((goal[bend] as number) - (least[bend] as number));

function fits(row: Row, share: readonly number[], slack: number): boolean {
	const tangent = (bend: number) => {
		const at = share[bend];
		return at === undefined ? 0 : (row.slope[bend] as number) * radius(row, bend, at);
	};
	return row.room.every((room, leg) => (leg > 0 ? tangent(leg - 1) : 0) + tangent(leg) <= room + slack);
}
