package padwright.views.canvas;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import padwright.engine.mechanism.Pressing;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Purpose;
import padwright.model.systems.EffectiveTouch;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.fingering.FingeringSession;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutPicture;
import padwright.views.layout.LayoutScene;

/**
 * The touches of a system in a row, to be pressed with the mouse or with the space bar; the drawing below shows what moves
 * and what is shut. What is pressed is written down as a note, and the notes are walked through.
 */
public final class FingeringControl extends Composite {

	private static final String TOUCH = "touch:";

	private final FingeringSession session = new FingeringSession();
	private final Map<String, Button> touches = new LinkedHashMap<>();
	private final Bar bar;
	private final Text note;
	private final Combo purpose;
	private final Button write;
	private final Composite row;
	private final SceneCanvas canvas;
	private final Label status;
	private Palette palette;
	private Consumer<List<TextEdit>> onEdit = edits -> {
	};
	private BiConsumer<Optional<String>, Pressing> onPress = (note, touches) -> {
	};

	public FingeringControl(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		bar = new Bar(this);
		bar.button(Messages.of("fingering.before"), Messages.of("fingering.before"), () -> walk(-1));
		bar.button(Messages.of("fingering.next"), Messages.of("fingering.next"), () -> walk(1));
		bar.label(Messages.of("fingering.note"));
		note = new Text(bar.row(), SWT.BORDER | SWT.SINGLE);
		note.setTextLimit(6);
		Bar.name(note, Messages.of("fingering.note"));
		bar.label(Messages.of("fingering.purpose"));
		purpose = new Combo(bar.row(), SWT.READ_ONLY);
		Purpose.VALUES.forEach(each -> purpose.add(each.getLiteral()));
		purpose.select(0);
		Bar.name(purpose, Messages.of("fingering.purpose"));
		write = bar.button(Messages.of("fingering.write"), Messages.of("fingering.writeTip"), this::write);
		note.addListener(SWT.DefaultSelection, enter -> write());
		row = new Composite(this, SWT.NONE);
		row.setLayout(new RowLayout(SWT.HORIZONTAL));
		row.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
		canvas = new SceneCanvas(this, palette, new Touches());
		canvas.setName(Messages.of("fingering.name"));
		canvas.setChosen(id -> id.startsWith(TOUCH) && session.isPressed(id.substring(TOUCH.length())));
		Bar.fill(canvas);
		status = new Label(this, SWT.WRAP);
		GridData line = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
		line.horizontalIndent = 8;
		status.setLayoutData(line);
		setPalette(palette);
	}

	/** Shows the touches and the drawing of a layout; what is pressed stays so. */
	public void show(Layout layout) {
		session.show(layout);
		List<String> names = session.touches().stream().map(EffectiveTouch::name).toList();
		if (!names.equals(List.copyOf(touches.keySet()))) {
			touches.values().forEach(Control::dispose);
			touches.clear();
			session.touches().forEach(touch -> touches.put(touch.name(), button(touch)));
			setPalette(palette);
			layout(true, true);
		}
		redrawn();
	}

	private Button button(EffectiveTouch touch) {
		Button button = new Button(row, SWT.TOGGLE);
		button.setText(touch.label());
		button.setToolTipText(Messages.of("fingering.touchTip", touch.label()));
		Bar.name(button, touch.label());
		button.addListener(SWT.Selection, event -> press(touch.name(), event));
		return button;
	}

	private void press(String touch, Event event) {
		session.press(touch, (event.stateMask & SWT.MOD2) != 0);
		pressed();
	}

	private void pressed() {
		redrawn();
		onPress.accept(session.note(), session.pressing());
	}

	/** What is pressed. */
	public FingeringSession session() {
		return session;
	}

	/** The drawing of what moves. */
	public SceneCanvas canvas() {
		return canvas;
	}

	/** Told what is written into the text, as one step. */
	public void onEdit(Consumer<List<TextEdit>> listener) {
		onEdit = listener;
	}

	/** Told what is pressed, and the note that it was pressed by. */
	public void onPress(BiConsumer<Optional<String>, Pressing> listener) {
		onPress = listener;
	}

	public void setPalette(Palette other) {
		palette = other;
		bar.setPalette(other);
		canvas.setPalette(other);
		for (Control control : List.of(this, row, status)) {
			control.setBackground(Colours.of(other.ground()));
			control.setForeground(Colours.of(other.ink()));
		}
		redrawn();
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	private void walk(int step) {
		session.walk(step);
		session.fingerings().stream().filter(each -> session.note().equals(Optional.of(each.name()))).findFirst()
				.ifPresent(shown -> {
					note.setText(shown.note());
					purpose.setText(shown.fingering().getPurpose().getLiteral());
				});
		pressed();
	}

	private void write() {
		String name = note.getText().strip();
		if (!session.canBeNote(name)) {
			status.setText(Messages.of("fingering.noNote", name));
			return;
		}
		List<TextEdit> edits = session.write(name, Optional.empty(), Purpose.get(purpose.getText()));
		if (!edits.isEmpty()) {
			onEdit.accept(edits);
		}
	}

	private void redrawn() {
		LayoutPicture picture = LayoutPicture.of(session.layout(), session.motion());
		canvas.setSource(aspect -> LayoutScene.draw(picture.lettered(canvas.lettering(LayoutControl.LETTERING)), palette));
		touches.forEach((name, button) -> button.setSelection(session.isPressed(name)));
		bar.enable(write, session.layout().isEditable());
		status.setText(words());
		status.requestLayout();
	}

	private String words() {
		List<String> lines = new ArrayList<>(session.contradictions());
		session.note().ifPresent(lines::add);
		if (session.layout().system().isPresent()) {
			List<String> open = session.open();
			lines.add(open.isEmpty() ? Messages.of("fingering.allShut")
					: Messages.of("fingering.open", String.join(" ", open)));
			List<String> missing = session.missing();
			if (!missing.isEmpty()) {
				lines.add(Messages.of("fingering.missing", String.join(" ", missing)));
			}
		}
		return String.join(" \u00B7 ", lines);
	}

	private final class Touches implements SceneListener {

		@Override
		public void touched(String id, boolean adding) {
			if (id.startsWith(TOUCH)) {
				session.press(id.substring(TOUCH.length()), adding);
				pressed();
			}
		}
	}
}
