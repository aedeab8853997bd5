import { useState } from "react";
import { Checkbox } from "react-aria-components";
import { AngleField } from "../../fields/angle-field.tsx";
import { LengthField } from "../../fields/length-field.tsx";
import type { CardInput } from "./card-input.ts";

interface Props {
	readonly input: CardInput;
	readonly onChange: (part: Partial<CardInput>) => void;
	/** Must be the same function every time. */
	readonly onRefused: (refused: boolean) => void;
}

/** What is known of the corner. */
export function CardFields({ input, onChange, onRefused }: Props) {
	const [uneven, setUneven] = useState(input.left !== input.right);
	const put = (part: Partial<CardInput>) => {
		onChange(part);
		return null;
	};
	return (
		<div className="card-input">
			<AngleField
				label="Room angle"
				value={input.angle}
				greatest={FLATTEST}
				commit={(angle) => put({ angle })}
				onRefused={onRefused}
			/>
			<LengthField
				label="Radius"
				value={input.radius}
				least={1}
				commit={(radius) => put({ radius })}
				onRefused={onRefused}
			/>
			<LengthField
				label={uneven ? "Projection, left wall" : "Projection"}
				value={input.left}
				least={1}
				commit={(left) => put(uneven ? { left } : { left, right: left })}
				onRefused={onRefused}
			/>
			{uneven ? (
				<LengthField
					label="Projection, right wall"
					value={input.right}
					least={1}
					commit={(right) => put({ right })}
					onRefused={onRefused}
				/>
			) : null}
			<LengthField
				label="Brackets from the corner"
				value={input.bracket}
				least={1}
				commit={(bracket) => put({ bracket })}
				onRefused={onRefused}
			/>
			<Checkbox
				className="tick"
				isSelected={uneven}
				onChange={(chosen) => {
					setUneven(chosen);
					if (!chosen) onChange({ right: input.left });
				}}
			>
				<span className="tick-box" aria-hidden="true" />
				Projections differ
			</Checkbox>
		</div>
	);
}

/** Flatter than this a track springs round the corner and nothing is bent, degrees. */
const FLATTEST = 177;
