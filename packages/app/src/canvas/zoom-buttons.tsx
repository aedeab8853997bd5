interface Props {
	/** What is zoomed, as it follows "Zoom": "the strip". */
	readonly what: string;
	/** All of it is in view: there is nothing to fit. */
	readonly whole: boolean;
	readonly outDisabled?: boolean;
	readonly inDisabled?: boolean;
	/** Times larger with each press. */
	readonly step: number;
	readonly zoom: (factor: number) => void;
	readonly fit: () => void;
}

/** Smaller, larger, all of it. */
export function ZoomButtons({ what, whole, outDisabled = false, inDisabled = false, step, zoom, fit }: Props) {
	return (
		<>
			<button
				type="button"
				className="plan-button"
				aria-label={`Zoom ${what} out`}
				disabled={outDisabled}
				onClick={() => zoom(1 / step)}
			>
				−
			</button>
			<button
				type="button"
				className="plan-button"
				aria-label={`Zoom ${what} in`}
				disabled={inDisabled}
				onClick={() => zoom(step)}
			>
				+
			</button>
			<button type="button" className="plan-button" disabled={whole} onClick={fit}>
				Fit
			</button>
		</>
	);
}
