package padwright.workbench.views;

import java.util.function.Consumer;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.ViewPart;

import padwright.views.Palette;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.menus.BenchMenu;
import padwright.workbench.themes.Themes;

/**
 * A view of what is on the bench. It follows the caret and the theme.
 *
 * @param <C> the control that draws it
 */
public abstract class BenchView<C extends Control> extends ViewPart {

	private static final String KEY_MENU = "padwright.workbench.keyMenu";

	private final Consumer<OnBench> onChange = this::show;
	private C control;
	private Themes themes;

	/** Makes the control; what the user does in it goes to {@code bench}. */
	protected abstract C create(Composite parent, Palette palette, Bench bench);

	protected abstract void show(C shown, OnBench onBench);

	protected abstract void setPalette(C shown, Palette palette);

	@Override
	public final void createPartControl(Composite parent) {
		themes = new Themes(palette -> setPalette(control, palette));
		control = create(parent, themes.palette(), bench());
		bench().follow(onChange);
		themes.follow();
	}

	/** Gives a control of the view the menu of the chosen key. */
	protected final void keyMenuOn(Control drawn) {
		BenchMenu.on(drawn, KEY_MENU, getSite());
	}

	protected final Bench bench() {
		return Bench.of(getSite().getWorkbenchWindow());
	}

	/** The control, for tests and commands. */
	public final C control() {
		return control;
	}

	private void show(OnBench onBench) {
		if (!control.isDisposed()) {
			show(control, onBench);
		}
	}

	@Override
	public void setFocus() {
		control.setFocus();
	}

	@Override
	public void dispose() {
		bench().unfollow(onChange);
		themes.unfollow();
		super.dispose();
	}
}
