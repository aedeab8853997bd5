import { useEffect, useState } from "react";
import { receiveFile } from "../storage/job-file.ts";

/** A job file or a drawing dropped anywhere on the window is opened. */
export function DropToOpen() {
	const [over, setOver] = useState(false);
	useEffect(() => {
		const onOver = (event: DragEvent) => {
			if (!event.dataTransfer?.types.includes("Files")) return;
			event.preventDefault();
			event.dataTransfer.dropEffect = "copy";
			setOver(true);
		};
		const onLeave = (event: DragEvent) => {
			if (event.relatedTarget === null) setOver(false);
		};
		const onDrop = (event: DragEvent) => {
			setOver(false);
			if (!event.dataTransfer?.types.includes("Files")) return;
			event.preventDefault();
			const file = event.dataTransfer.files[0];
			if (file) void receiveFile(file);
		};
		document.addEventListener("dragover", onOver);
		document.addEventListener("dragleave", onLeave);
		document.addEventListener("drop", onDrop);
		return () => {
			document.removeEventListener("dragover", onOver);
			document.removeEventListener("dragleave", onLeave);
			document.removeEventListener("drop", onDrop);
		};
	}, []);
	return over ? <div className="drop">Let go to open this job file or drawing</div> : null;
}
