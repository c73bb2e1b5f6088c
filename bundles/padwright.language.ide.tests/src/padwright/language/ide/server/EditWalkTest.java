package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** After any number of edits, an editor knows what a fresh look at the texts finds. */
class EditWalkTest {

	private static final int EDITS = 1500;
	private static final int LOOK = 30;

	@TempDir
	private Path folder;

	@Test
	void whatTheEditorWasToldIsWhatAFreshLookFinds() throws Exception {
		try (EditWalk walk = new EditWalk(folder, 7)) {
			for (int edit = 1; edit <= EDITS; edit++) {
				walk.edit();
				if (edit % LOOK == 0) {
					List<List<String>> both = walk.toldAndFresh();
					assertEquals(both.get(1), both.get(0), "edit " + edit + "\n" + walk.texts());
				}
			}
		}
	}
}
