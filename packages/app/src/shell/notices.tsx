import { Button } from "react-aria-components";
import { useScreen } from "../desk/screen.ts";
import { saveJobFile } from "../storage/job-file.ts";
import { keepMine, takeTheirs } from "../storage/keeper.ts";

/** What stands between the work and its safe keeping. */
export function Notices() {
	const elsewhere = useScreen((state) => state.elsewhere);
	const overtaken = useScreen((state) => state.overtaken);
	const trouble = useScreen((state) => state.storageTrouble);
	return (
		<div className="notices" role="status">
			{overtaken ? (
				<div className="notice notice-grave">
					<p>
						<strong>Another tab has stored this job since.</strong> Nothing here is lost or stored until you choose.
					</p>
					<Button className="button" onPress={() => void keepMine()}>
						Keep mine
					</Button>
					<Button className="button" onPress={() => void takeTheirs()}>
						Take theirs
					</Button>
				</div>
			) : null}
			{elsewhere && !overtaken ? (
				<p className="notice">This job is open in another tab too. Work in one of them.</p>
			) : null}
			{trouble === "" ? null : (
				<div className="notice notice-grave">
					<p>{trouble}</p>
					<Button className="button" onPress={() => void saveJobFile()}>
						Save to a file
					</Button>
				</div>
			)}
		</div>
	);
}
