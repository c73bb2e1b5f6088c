package padwright.workbench.views;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.io.StringWriter;

import org.eclipse.ui.XMLMemento;
import org.junit.jupiter.api.Test;

import padwright.views.regulate.Progress;

class DoneWorkTest {

	/** As at the next start: by way of what the window writes of its layout. */
	@Test
	void whatIsTickedOffIsKeptForEachPlan() throws Exception {
		Progress first = Progress.none().with("F > Fs", true).with("A > As", true);
		Progress second = Progress.none().with("E > F", true);
		DoneWork before = new DoneWork();
		before.put("file:/first.plan", first);
		before.put("file:/second.plan", second);
		DoneWork after = new DoneWork();
		after.restore(kept(before));
		assertEquals(first, after.of("file:/first.plan"));
		assertEquals(second, after.of("file:/second.plan"));
		assertEquals(Progress.none(), after.of("file:/third.plan"));
	}

	@Test
	void theFirstStartHasNothingToKeep() {
		DoneWork done = new DoneWork();
		done.restore(null);
		assertEquals(Progress.none(), done.of("file:/first.plan"));
	}

	private static XMLMemento kept(DoneWork done) throws Exception {
		XMLMemento memento = XMLMemento.createWriteRoot("view");
		done.save(memento);
		StringWriter text = new StringWriter();
		memento.save(text);
		return XMLMemento.createReadRoot(new StringReader(text.toString()));
	}
}
