package padwright.views.layout;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

import com.google.inject.Injector;

import padwright.language.PadwrightStandaloneSetup;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;

import padwright.language.edit.TextEdit;

/** A system in a layout without a window: what is done to it changes its text, which is read anew. */
public final class DrawnSystem implements LayoutListener {

	/** A system with a tube of 300 mm, a key, a hole and two touches. */
	static final String FLUTE = """
			unit mm
			system Flute {
				joint body long 300 bore 19
				touch T1
				touch T2 at 50 around 40
				hole H 7 at 60
				key A open by T1 hole 13 cup 16 at 100 // first
				key B closed hole 13 cup 16 at 140 around 20
				key Lever
			}
			""";
	/** Another that is based on it, drawn instead. */
	static final String OTHER = FLUTE + "system Other based on Flute {\n}\n";

	private static final Injector LANGUAGE = PadwrightStandaloneSetup.doSetup();

	final LayoutEditing editing = new LayoutEditing(this);
	private final List<LayoutLink.Kind> asked = new ArrayList<>();
	private String text;

	public DrawnSystem(String text) {
		this.text = text;
		read();
	}

	private void read() {
		XtextResource resource = (XtextResource) LANGUAGE.getInstance(XtextResourceSet.class)
				.createResource(URI.createURI("shop:/flute.keys"));
		try {
			resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
					Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
		} catch (IOException impossibleInMemory) {
			throw new UncheckedIOException(impossibleInMemory);
		}
		List<KeySystem> systems = ((Document) resource.getContents().get(0)).getSystems();
		editing.show(Layout.of(systems.get(systems.size() - 1)));
	}

	public String text() {
		return text;
	}

	/** As the text was read last. */
	public Layout layout() {
		return editing.layout();
	}

	List<LayoutLink.Kind> asked() {
		return asked;
	}

	double x(String id) {
		return Spot.of(editing.picture(), editing.layout().item(id).orElseThrow()).x();
	}

	double y(String id) {
		return Spot.of(editing.picture(), editing.layout().item(id).orElseThrow()).y();
	}

	/** Drags something by millimetres of the drawing. */
	void drag(String id, double dx, double dy) {
		editing.grab(Optional.of(id), x(id), y(id), false);
		editing.drag(x(id) + dx / 2, y(id) + dy, 1);
		editing.drag(x(id) + dx, y(id) + dy, 1);
		editing.drop(Optional.empty());
	}

	@Override
	public void changed() {
		// Nothing is shown.
	}

	@Override
	public void write(List<TextEdit> edits) {
		text = TextEdit.apply(edits, text);
		read();
	}

	@Override
	public void choose(String from, String to, List<LayoutLink.Kind> kinds) {
		asked.addAll(kinds);
	}
}
