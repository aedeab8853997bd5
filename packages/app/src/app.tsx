import { lazy, Suspense } from "react";
import { useScreen } from "./desk/screen.ts";
import { Announcer } from "./shell/announcer.tsx";
import { DropToOpen } from "./shell/drop.tsx";
import { useNarrow } from "./shell/media.ts";
import { Sheets } from "./shell/sheets.tsx";
import { Shortcuts } from "./shell/shortcuts.tsx";

const DrawingOffice = lazy(async () => ({ default: (await import("./shell/office.tsx")).DrawingOffice }));
const Column = lazy(async () => ({ default: (await import("./phone/column.tsx")).Column }));
const FirstUse = lazy(async () => ({ default: (await import("./examples/first-use.tsx")).FirstUse }));

/** The whole screen: the opening page while there is no job, otherwise the desk. */
export function App() {
	const started = useScreen((state) => state.started);
	const narrow = useNarrow();
	return (
		<>
			<Suspense fallback={null}>{started ? narrow ? <Column /> : <DrawingOffice /> : <FirstUse />}</Suspense>
			<Sheets />
			<Announcer />
			<DropToOpen />
			<Shortcuts />
		</>
	);
}
