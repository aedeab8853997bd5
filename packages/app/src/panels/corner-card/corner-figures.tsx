import { type CornerCard, formatAngle, formatLength } from "@baywright/setout";
import { useDesk } from "../../desk/desk.ts";
import type { CardInput } from "./card-input.ts";

interface Props {
	readonly input: CardInput;
	readonly card: CornerCard;
}

/** Stands for a figure while something typed is refused. */
const NONE = "–";

/** What is marked out at the corner, and what the usual rule would have made of it. */
export function CornerFigures({ input, card, unsure }: Props & { readonly unsure: boolean }) {
	const unit = useDesk((state) => state.shown.display.length);
	const show = (mm: number) => (unsure ? NONE : formatLength(mm, unit, { precision: 1 }));
	const whole = (mm: number) => formatLength(mm, unit);
	const [left, right] = card.setBack;
	return (
		<div className="card-figures">
			<dl className="card-list">
				<Item
					main
					term={unsure ? "Between brackets" : `Between brackets ${whole(input.bracket)} each side`}
					text={card.betweenBrackets === null ? NONE : show(card.betweenBrackets)}
				/>
				{Math.abs(left - right) < SAME ? (
					<Item term="Set-back, each side" text={show(left)} />
				) : (
					<>
						<Item term="Set-back, left wall" text={show(left)} />
						<Item term="Set-back, right wall" text={show(right)} />
					</>
				)}
				<Item term="Sweep" text={show(card.sweep)} />
				<Item term="Corner gap" text={show(card.cornerGap)} />
			</dl>
			{!unsure && card.betweenBrackets === null && input.bracket !== card.rule.brackets ? (
				<p className="card-rule card-rule-off" role="status">
					A bracket {whole(input.bracket)} from the corner would sit on the bend, which starts at{" "}
					{show(Math.max(left, right))}. Move the brackets out, or take a smaller radius.
				</p>
			) : null}
			{unsure ? null : <Rule input={input} card={card} />}
		</div>
	);
}

function Item({ term, text, main = false }: { readonly term: string; readonly text: string; readonly main?: boolean }) {
	return (
		<div className={main ? "card-item card-item-main" : "card-item"}>
			<dt>{term}</dt>
			<dd>{text}</dd>
		</div>
	);
}

/** The usual rule beside the corner as it is. */
function Rule({ input, card }: Props) {
	const unit = useDesk((state) => state.shown.display.length);
	const whole = (mm: number) => formatLength(mm, unit);
	const { rule, overRule } = card;
	const said = `The usual rule for a right angle (common practice) has ${whole(rule.between)} of track between brackets ${whole(rule.brackets)} each side.`;
	const holds = overRule !== null && Math.abs(overRule) < NEAR;
	return (
		<p className={holds ? "card-rule" : "card-rule card-rule-off"} role="status">
			{said} <strong>{verdict(input.angle, card, (mm) => formatLength(mm, unit, { precision: 1 }))}</strong>
		</p>
	);
}

/** Nearer to the rule than this, no saw would tell, mm. */
const NEAR = 5;

/** Set-backs that agree this closely are one figure, mm. */
const SAME = 0.05;

function verdict(angle: number, { overRule, setBack }: CornerCard, fine: (mm: number) => string): string {
	if (overRule === null)
		return `At ${formatAngle(angle)} the bend starts ${fine(Math.max(...setBack))} from the corner: brackets there would sit on it.`;
	const off = fine(Math.abs(overRule));
	if (Math.abs(overRule) < NEAR) return `At ${formatAngle(angle)} it holds, to ${off}.`;
	return `At ${formatAngle(angle)} that is ${off} too ${overRule > 0 ? "short" : "long"}.`;
}
