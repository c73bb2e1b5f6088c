package padwright.workbench.views;

import java.util.Optional;

import org.eclipse.swt.widgets.Control;

import padwright.views.layout.Layout;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.Workpiece;

/**
 * A view of the key system in the active editor, or of the one that the plan there is for. While its text has a fault the last
 * good drawing stays.
 *
 * @param <C> the control that draws it
 */
abstract class SystemView<C extends Control> extends BenchView<C> {

	private Layout lastGood = Layout.empty();
	private Optional<String> lastUri = Optional.empty();

	/** Shows a layout, and what is chosen on the bench. */
	abstract void show(C shown, Layout layout, OnBench onBench);

	@Override
	protected final void show(C shown, OnBench onBench) {
		Layout read = onBench.work().map(Workpiece::layout).orElseGet(Layout::empty);
		Optional<String> uri = read.system().map(system -> system.eResource().getURI().toString());
		boolean isSameText = uri.isPresent() && uri.equals(lastUri);
		Layout drawn = isSameText && read.fault().isPresent() && lastGood.system().isPresent()
				? lastGood.with(read.fault().get()) : read;
		if (read.fault().isEmpty() || !isSameText) {
			lastGood = read;
		}
		lastUri = uri;
		show(shown, drawn, onBench);
	}
}
