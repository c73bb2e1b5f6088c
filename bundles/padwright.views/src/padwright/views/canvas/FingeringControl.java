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
import org.eclipse.swt.widgets.Text;

import padwright.engine.mechanism.Pressing;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Purpose;
import padwright.model.systems.EffectiveTouch;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.fingering.FingeringSession;
import padwright.views.fingering.PressMark;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutPicture;
import padwright.views.layout.LayoutScene;
import padwright.workup.words.Phrase;

/**
 * The touches of a system in a row, to be pressed with the mouse or with the space bar; the drawing below shows what moves
 * and what is shut. What is pressed is written down as a note, and the notes are walked through.
 */
public final class FingeringControl extends DrawingControl {

	private static final String TOUCH = "touch:";

	private final FingeringSession session = new FingeringSession();
	private final Map<String, Button> touches = new LinkedHashMap<>();
	private final Text note;
	private final Combo purpose;
	private final Button write;
	private final Composite row;
	private final MarkImages<PressMark> marks;
	private Consumer<List<TextEdit>> onEdit = edits -> {
	};
	private BiConsumer<Optional<String>, Pressing> onPress = (note, touches) -> {
	};

	public FingeringControl(Composite parent, Palette palette) {
		super(parent, palette);
		bar().button(Messages.of("fingering.before"), Messages.of("fingering.before"), () -> walk(-1));
		bar().button(Messages.of("fingering.next"), Messages.of("fingering.next"), () -> walk(1));
		bar().label(Messages.of("fingering.note"));
		note = new Text(bar().row(), SWT.BORDER | SWT.SINGLE);
		note.setTextLimit(6);
		Bar.name(note, Messages.of("fingering.note"));
		bar().label(Messages.of("fingering.purpose"));
		purpose = new Combo(bar().row(), SWT.READ_ONLY);
		Purpose.VALUES.forEach(each -> purpose.add(words(each)));
		purpose.select(0);
		Bar.name(purpose, Messages.of("fingering.purpose"));
		write = bar().button(Messages.of("fingering.write"), Messages.of("fingering.writeTip"), this::write);
		note.addListener(SWT.DefaultSelection, enter -> write());
		row = new Composite(this, SWT.NONE);
		marks = new MarkImages<>(row, palette, PressMark::draw);
		row.setLayout(new RowLayout(SWT.HORIZONTAL));
		row.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
		drawing(Messages.of("fingering.name"), new Touches());
		canvas().setChosen(id -> id.startsWith(TOUCH) && session.isPressed(id.substring(TOUCH.length())));
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
			setPalette(palette());
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

	/** Told what is written into the text, as one step. */
	public void onEdit(Consumer<List<TextEdit>> listener) {
		onEdit = listener;
	}

	/** Told what is pressed, and the note that it was pressed by. */
	public void onPress(BiConsumer<Optional<String>, Pressing> listener) {
		onPress = listener;
	}

	@Override
	public void setPalette(Palette other) {
		marks.setPalette(other);
		super.setPalette(other);
		paint(List.of(row));
	}

	private void walk(int step) {
		session.walk(step);
		session.fingerings().stream().filter(each -> session.note().equals(Optional.of(each.name()))).findFirst()
				.ifPresent(shown -> {
					note.setText(shown.note());
					purpose.select(Purpose.VALUES.indexOf(shown.fingering().getPurpose()));
				});
		pressed();
	}

	private void write() {
		String name = note.getText().strip();
		if (!session.canBeNote(name)) {
			tell(Messages.of("fingering.noNote", name));
			return;
		}
		List<TextEdit> edits = session.write(name, Optional.empty(), Purpose.VALUES.get(purpose.getSelectionIndex()));
		if (!edits.isEmpty()) {
			onEdit.accept(edits);
		}
	}

	@Override
	void redrawn() {
		LayoutPicture picture = LayoutPicture.of(session.layout(), session.motion());
		canvas().setSource(aspect -> LayoutScene.draw(picture.lettered(canvas().readable()), palette()));
		touches.forEach(this::show);
		bar().enable(write, session.layout().isEditable());
		tell(words());
	}

	private void show(String touch, Button button) {
		boolean isPressed = session.isPressed(touch);
		button.setSelection(isPressed);
		button.setImage(marks.of(!isPressed ? PressMark.UP : session.isHalf(touch) ? PressMark.HALF : PressMark.DOWN));
		button.setForeground(Colours.of(isPressed ? palette().accent() : palette().ink()));
	}

	private static String words(Purpose purpose) {
		return switch (purpose) {
		case USUAL -> Messages.of("fingering.usual");
		case ALTERNATE -> Messages.of("fingering.alternate");
		case TRILL -> Messages.of("fingering.trill");
		case OTHER -> Messages.of("fingering.other");
		};
	}

	private String words() {
		List<String> lines = new ArrayList<>(session.contradictions().stream().map(Phrase::words).toList());
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
