/** Between a figure that does and one that does not, the last that does, after so many halvings of what lies between. */
export function lastThatHolds(holds: (figure: number) => boolean, good: number, bad: number, halvings: number): number {
	let yes = good;
	let no = bad;
	for (let i = 0; i < halvings; i++) {
		const middle = (yes + no) / 2;
		if (holds(middle)) yes = middle;
		else no = middle;
	}
	return yes;
}
