import { builtInCloths, type Cloth, formatLength } from "@baywright/setout";
import { useState } from "react";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { addCloth, clothsOf, makeOfCloth, removeCloth } from "../desk/edit-cloth.ts";
import { bayOnTable } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { ClothFields } from "./cloth-fields.tsx";
import { Item } from "./item.tsx";

/** The job's own cloths and the built-in ones: to make a curtain of, and to set the figures of. */
export function ClothsSheet({ curtain }: { readonly curtain: number | null }) {
	const job = useDesk((state) => state.shown);
	const [open, setOpen] = useState<string | null>(null);
	const cloths = clothsOf(job);
	return (
		<>
			<p className="quiet">
				Invented cloths, named by what they are. The label on your own roll decides: open a cloth to set its figures,
				which are then kept with the job.
			</p>
			<ul className="systems cloths">
				{cloths.map((cloth) => (
					<ClothCard
						key={cloth.id}
						cloth={cloth}
						curtain={curtain}
						open={open === cloth.id}
						toggle={() => setOpen(open === cloth.id ? null : cloth.id)}
					/>
				))}
			</ul>
			<Button className="button" onPress={() => setOpen(addCloth(cloths.at(-1) as Cloth))}>
				Add a cloth
			</Button>
		</>
	);
}

interface Props {
	readonly cloth: Cloth;
	readonly curtain: number | null;
	readonly open: boolean;
	readonly toggle: () => void;
}

function ClothCard({ cloth, curtain, open, toggle }: Props) {
	const unit = useDesk((state) => state.shown.display.length);
	const uses = useDesk(
		(state) => bayOnTable(state).curtains.filter((each, i) => each.cloth === cloth.id && (curtain ?? i) === i).length,
	);
	const wanted = useDesk((state) => (curtain === null ? bayOnTable(state).curtains.length : 1));
	const chosen = uses > 0 && uses === wanted;
	const show = (mm: number) => formatLength(mm, unit);
	const name = cloth.name || cloth.id;
	return (
		<li className={chosen ? "system chosen" : "system"}>
			<div>
				<h3>{name}</h3>
				<Origin id={cloth.id} />
			</div>
			<dl>
				<Item term="width" text={show(cloth.width)} />
				<Item term="repeat" text={repeatOf(cloth, show)} />
				<Item term="mass" text={cloth.mass === null ? "not known" : `${cloth.mass} g/m²`} />
				<Item term="lining" text={cloth.lining === null ? "none" : cloth.lining.name || "lined"} />
			</dl>
			<div className="cloth-does">
				<Button
					className="button"
					isDisabled={chosen}
					aria-label={`Use ${name}`}
					onPress={() => {
						makeOfCloth(curtain, cloth.id);
						screen.getState().close();
					}}
				>
					{chosen ? "In use" : "Use"}
				</Button>
				<Button className="button" aria-label={`Figures of ${name}`} aria-expanded={open} onPress={toggle}>
					{open ? "Close" : "Figures"}
				</Button>
			</div>
			{open ? <ClothFields cloth={cloth} /> : null}
		</li>
	);
}

/** Whose figures these are: as built in, changed in the job, or the job's own. */
function Origin({ id }: { readonly id: string }) {
	const own = useDesk((state) => state.shown.cloths.some((cloth) => cloth.id === id));
	const used = useDesk((state) => state.shown.bays.some(({ curtains }) => curtains.some(({ cloth }) => cloth === id)));
	const builtIn = builtInCloths.some((cloth) => cloth.id === id);
	if (!own) return null;
	return (
		<p className="quiet">
			{builtIn ? "changed in this job" : "this job's own"}
			{builtIn || !used ? (
				<>
					{" · "}
					<Button className="link" onPress={() => removeCloth(id)}>
						{builtIn ? "as it came" : "remove"}
					</Button>
				</>
			) : null}
		</p>
	);
}

function repeatOf({ repeat, match }: Cloth, show: (mm: number) => string): string {
	if (repeat === 0) return "plain";
	return match === "half-drop" ? `${show(repeat)}, half drop` : show(repeat);
}
