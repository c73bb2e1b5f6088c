package padwright.views.canvas;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.board.BoardCard;
import padwright.views.board.BoardScene;
import padwright.views.board.BoardState;
import padwright.workup.next.NextSteps;

/** The board of a shop: what is next at every instrument, for one day and for all hands or one. */
public final class Board extends Composite {

	private final Bar bar;
	private final Label day;
	private final Combo hands;
	private final Label count;
	private final SceneCanvas canvas;
	private Palette palette;
	private Optional<NextSteps> next = Optional.empty();
	private Optional<String> hand = Optional.empty();
	private BoardState state = BoardState.empty(LocalDate.EPOCH);
	private Consumer<Integer> onDay = days -> {
	};
	private Consumer<BoardCard> onOpen = card -> {
	};

	public Board(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		bar = new Bar(this);
		button("board.dayBefore", "\u2039", -1);
		day = bar.label("0000-00-00");
		button("board.dayAfter", "\u203A", 1);
		bar.label(Messages.of("board.hands"));
		hands = new Combo(bar.row(), SWT.READ_ONLY);
		hands.setItems(Messages.of("board.all"));
		hands.select(0);
		hands.addListener(SWT.Selection, event -> chooseHand(hands.getSelectionIndex() == 0 ? Optional.empty()
				: Optional.of(hands.getText())));
		Bar.name(hands, Messages.of("board.hands"));
		count = bar.label("");
		canvas = new SceneCanvas(this, palette, new Touches());
		canvas.setName(Messages.of("board.name"));
		Bar.fill(canvas);
		setPalette(palette);
	}

	private void button(String words, String sign, int days) {
		Button button = bar.button(sign, Messages.of(words), () -> onDay.accept(days));
		Bar.name(button, Messages.of(words));
	}

	/** Shows what is next. */
	public void show(NextSteps steps) {
		next = Optional.of(steps);
		redrawn();
	}

	/** Shows the instruments of one hand alone, or all. */
	public void chooseHand(Optional<String> chosen) {
		hand = chosen;
		redrawn();
	}

	/** Told by how many days another day is wished. */
	public void onDay(Consumer<Integer> listener) {
		onDay = listener;
	}

	/** Told of a card that is double-clicked, or chosen twice with Enter. */
	public void onOpen(Consumer<BoardCard> listener) {
		onOpen = listener;
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		setBackground(Colours.of(palette.ground()));
		bar.setPalette(palette);
		canvas.setPalette(palette);
		redrawn();
	}

	/** What is shown, for zooming and for tests. */
	public SceneCanvas canvas() {
		return canvas;
	}

	public BoardState state() {
		return state;
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	private void redrawn() {
		next.ifPresent(steps -> {
			state = BoardState.of(steps, hand);
			day.setText(steps.today().toString());
			count.setText(state.silent() == 0 ? Messages.of("board.cards", state.count())
					: Messages.of("board.cardsSilent", state.count(), state.silent()));
			showHands();
			bar.row().layout();
		});
		canvas.setSource(aspect -> BoardScene.draw(state, palette, aspect));
	}

	private void showHands() {
		List<String> items = new ArrayList<>(List.of(Messages.of("board.all")));
		items.addAll(state.hands());
		if (!items.equals(List.of(hands.getItems()))) {
			hands.setItems(items.toArray(String[]::new));
		}
		hands.select(Math.max(0, hand.map(items::indexOf).orElse(0)));
	}

	private final class Touches implements SceneListener {

		@Override
		public void opened(String id) {
			state.card(id).ifPresent(onOpen);
		}
	}
}
