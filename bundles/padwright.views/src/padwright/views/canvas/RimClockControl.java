package padwright.views.canvas;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import padwright.engine.clock.ClockHour;
import padwright.language.edit.TextEdit;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.bench.KeyOrder;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockSession;
import padwright.views.clock.ClockState;
import padwright.workup.service.KeyJob;

/**
 * The clock of a pad. Readings are typed in turn, a stroke each; pieces are chosen, dragged, moved with the arrows, added
 * with + and dropped with Delete.
 */
public final class RimClockControl extends Composite {

	private final ClockSession session;
	private final Bar bar;
	private final SceneCanvas canvas;
	private final Label status;
	private final Button solve;
	private final Button apply;
	private final Button discard;
	private final Button add;
	private final Button round;
	private Palette palette;
	private Predicate<List<TextEdit>> onEdit = edits -> true;
	private Consumer<KeyJob> onSolve = job -> {
	};

	public RimClockControl(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		session = new ClockSession(edits -> onEdit.test(edits));
		bar = new Bar(this);
		solve = bar.button(Messages.of("clock.solve"), Messages.of("clock.solveTip"),
				() -> session.state().job().ifPresent(job -> onSolve.accept(job)));
		apply = bar.button(Messages.of("clock.apply"), Messages.of("clock.applyTip"), act(session::apply));
		discard = bar.button(Messages.of("clock.discard"), Messages.of("clock.discardTip"),
				act(() -> session.propose(Optional.empty())));
		add = bar.button(Messages.of("clock.add"), Messages.of("clock.addTip"), act(session::add));
		round = bar.button(Messages.of("clock.round"), Messages.of("clock.roundTip"), act(session::anotherRound));
		canvas = new SceneCanvas(this, palette, new Touches());
		canvas.setName(Messages.of("clock.name"));
		Bar.fill(canvas);
		status = new Label(this, SWT.NONE);
		GridData line = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
		line.horizontalIndent = 8;
		status.setLayoutData(line);
		setPalette(palette);
	}

	/** Shows a row as the plan's text says now; to be called after every edit, too. */
	public void show(ClockState state) {
		session.show(state);
		redrawn();
	}

	/** Shows what a solve came to, until it is applied or discarded. Another row's is passed over. */
	public void propose(ClockProposal proposal) {
		session.propose(Optional.of(proposal));
		redrawn();
	}

	/**
	 * Told of each change as one list of edits of the plan's text: to be applied as one step of undo. False where it could
	 * not be, because the text is another meanwhile.
	 */
	public void onEdit(Predicate<List<TextEdit>> listener) {
		onEdit = listener;
	}

	/** Told of the key to go on to, once all hours of a key are read. */
	public void onGo(Consumer<String> listener) {
		session.typing().onAllRead(KeyOrder::nextToRead, listener);
	}

	/** Told of the row to solve; the answer goes to {@link #propose}. */
	public void onSolve(Consumer<KeyJob> listener) {
		onSolve = listener;
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		setBackground(Colours.of(palette.ground()));
		status.setBackground(Colours.of(palette.ground()));
		status.setForeground(Colours.of(palette.ink()));
		bar.setPalette(palette);
		canvas.setPalette(palette);
		redrawn();
	}

	/** For zooming from a menu or tool bar. */
	public SceneCanvas canvas() {
		return canvas;
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	private Runnable act(Runnable action) {
		return () -> {
			action.run();
			redrawn();
			canvas.setFocus();
		};
	}

	private void redrawn() {
		bar.enable(solve, session.state().job().isPresent());
		bar.enable(add, session.state().job().isPresent());
		bar.enable(apply, session.proposal().isPresent());
		bar.enable(discard, session.proposal().isPresent());
		bar.enable(round, !session.state().readings().isEmpty());
		status.setText(session.status());
		status.setToolTipText(session.status());
		canvas.setSource(aspect -> session.draw(palette, aspect));
	}

	private final class Touches implements SceneListener {

		@Override
		public void touched(String id, boolean adding) {
			focused(id);
		}

		@Override
		public void focused(String id) {
			if (id.startsWith("reading-")) {
				session.state().hours().stream().filter(hour -> id.equals("reading-" + hour)).findFirst()
						.ifPresent((ClockHour hour) -> session.typing().goTo(hour));
			} else if (id.startsWith("piece-")) {
				session.select(Optional.of(piece(id)));
			}
			redrawn();
		}

		/** The clock numbers all pieces it draws, those of earlier rounds first. */
		private int piece(String id) {
			int number = number(id);
			return id.startsWith("piece-") ? number - session.earlierCount() : number;
		}

		private static int number(String id) {
			return Integer.parseInt(id.substring(id.indexOf('-') + 1));
		}

		@Override
		public void cleared() {
			session.select(Optional.empty());
			session.propose(Optional.empty());
			redrawn();
		}

		@Override
		public boolean canDrag(String id) {
			return id.startsWith("from-") || id.startsWith("to-");
		}

		@Override
		public void dragged(String id, double x, double y) {
			session.drag(piece(id), id.startsWith("to-"), x, y);
			redrawn();
		}

		@Override
		public void dropped(String id) {
			session.drop();
			redrawn();
		}

		@Override
		public boolean typed(KeyEvent event) {
			boolean used = session.type(event.character) || ClockKeys.press(session, event);
			if (used) {
				redrawn();
			}
			return used;
		}
	}
}
