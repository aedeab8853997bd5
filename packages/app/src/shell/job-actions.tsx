import { Button } from "react-aria-components";
import { openJobFile, saveJobFile } from "../storage/job-file.ts";

/** Job files. */
export function JobActions() {
	return (
		<div className="pair">
			<Button className="button" onPress={() => void openJobFile()}>
				Open
			</Button>
			<Button className="button" onPress={() => void saveJobFile()}>
				Save
			</Button>
		</div>
	);
}
