import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { screen, toTop } from "../desk/screen.ts";

/** The name of the bay on the table; where the job has several, a choice of them. */
export function BaySwitch() {
	const names = useDesk((state) =>
		state.shown.bays.map((bay, i) => (bay.name === "" ? `Bay ${i + 1}` : bay.name)).join("\n"),
	);
	const bay = useDesk((state) => state.bay);
	const bays = names.split("\n");
	return (
		<>
			{bays.length === 1 ? <p className="header-bay">{names}</p> : <BayChoice bays={bays} bay={bay} />}
			<Button
				className="header-bays"
				aria-label="Bays: add, name, remove"
				onPress={() => screen.getState().show({ kind: "bays" })}
			>
				Bays
			</Button>
		</>
	);
}

function BayChoice({ bays, bay }: { readonly bays: readonly string[]; readonly bay: number }) {
	return (
		<select
			className="bay-switch"
			aria-label="Bay"
			value={bay}
			onChange={(event) => {
				desk.getState().showBay(Number(event.currentTarget.value));
				toTop();
			}}
		>
			{bays.map((name, index) => (
				// biome-ignore lint/suspicious/noArrayIndexKey: a bay is known by its place
				<option key={index} value={index}>
					{name} ({index + 1} of {bays.length})
				</option>
			))}
		</select>
	);
}
