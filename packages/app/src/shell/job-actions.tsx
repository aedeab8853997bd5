import { Button } from "react-aria-components";
import { screen } from "../desk/screen.ts";
import { openJobFile, saveJobFile } from "../storage/job-file.ts";

/** Job files and examples. */
export function JobActions() {
	return (
		<div className="pair">
			<Button className="button" onPress={() => screen.getState().show({ kind: "examples" })}>
				Examples
			</Button>
			<Button className="button" onPress={() => void openJobFile()}>
				Open
			</Button>
			<Button className="button" onPress={() => void saveJobFile()}>
				Save
			</Button>
		</div>
	);
}
