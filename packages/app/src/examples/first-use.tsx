import { Suspense } from "react";
import { Button } from "react-aria-components";
import { screen } from "../desk/screen.ts";
import { Mark } from "../shell/mark.tsx";
import { Notices } from "../shell/notices.tsx";
import { ThemeButton } from "../shell/theme-button.tsx";
import { openJobFile } from "../storage/job-file.ts";
import { Opening } from "./opening.tsx";

/** What stands on the screen while there is no job: no words to read first, a bay to take. */
export function FirstUse() {
	return (
		<div className="first-use">
			<Notices />
			<header className="first-head">
				<Mark />
				<h1>Baywright</h1>
				<ThemeButton />
			</header>
			<main>
				<p className="first-line">
					A curtain track set out for a bay: brackets, bends and cut lengths. Take the bay most like yours.
				</p>
				<div className="pair">
					<Button className="button" onPress={() => void openJobFile()}>
						Open a job file
					</Button>
					<Button className="button" onPress={() => screen.getState().show({ kind: "corner-card", corner: null })}>
						Corner card, for one odd corner
					</Button>
				</div>
				<Suspense fallback={<p className="quiet">One moment…</p>}>
					<Opening />
				</Suspense>
			</main>
		</div>
	);
}
