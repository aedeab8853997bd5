import { editBay } from "../desk/edit-bay.ts";
import { screen } from "../desk/screen.ts";
import { PlainCards } from "../examples/plain-cards.tsx";
import { lower } from "../fields/lower.ts";

/** A bay without walls: what it is like is said first, then every length of it is taped. */
export function FirstShape() {
	return (
		<section className="taking-shape" aria-label="Tape">
			<h2>What is the bay like?</h2>
			<p>Choose the shape that comes nearest. Every length of it is then taped, one after the other.</p>
			<PlainCards
				take={(plain, title) =>
					editBay(`begin with ${lower(title)}`, ({ id, name }) => ({
						...plain,
						id,
						name,
					}))
				}
				tape={() => screen.getState().set({ wanted: "walls" })}
			/>
		</section>
	);
}
