/**
 * Probability that a chi-square variable of `freedom` degrees (a whole number) stays under `value`: the regularized incomplete gamma
 * function P(ν/2, x/2) by its series, P = xᵃe⁻ˣ Σ xⁿ / Γ(a + n + 1).
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 6.5.29 and 26.4.19.
 */
export function chiSquareBelow(value: number, freedom: number): number {
	if (!(value > 0)) return 0;
	const x = value / 2;
	const a = freedom / 2;
	let term = Math.exp(a * Math.log(x) - x - logGammaOfHalf(freedom + 2));
	// Too far out on either side to be told from nothing or all.
	if (term === 0) return x > a ? 1 : 0;
	let sum = 0;
	for (let n = 1; n <= x || term > sum * Number.EPSILON; n++) {
		sum += term;
		term *= x / (a + n);
	}
	return Math.min(1, sum);
}

/** The value that a chi-square variable of `freedom` degrees stays under with this probability, by halving. */
export function chiSquareQuantile(probability: number, freedom: number): number {
	let low = 0;
	let high = freedom + 1;
	while (chiSquareBelow(high, freedom) < probability) high *= 2;
	for (let middle = high / 2; middle > low && middle < high; middle = (low + high) / 2) {
		if (chiSquareBelow(middle, freedom) < probability) low = middle;
		else high = middle;
	}
	return high;
}

/** ln Γ(n/2), n a whole number over 0: down to Γ(1) = 1 or Γ(1/2) = √π. */
function logGammaOfHalf(n: number): number {
	let sum = n % 2 === 0 ? 0 : Math.log(Math.PI) / 2;
	for (let k = n - 2; k > 0; k -= 2) sum += Math.log(k / 2);
	return sum;
}
