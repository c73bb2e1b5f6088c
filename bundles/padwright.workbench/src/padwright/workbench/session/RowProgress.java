package padwright.workbench.session;

import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;

import padwright.workup.service.KeyJob;

/** Tells a monitor of each row, and gives up when its user cancels. */
public record RowProgress(IProgressMonitor monitor) implements Consumer<KeyJob> {

	@Override
	public void accept(KeyJob next) {
		monitor.worked(1);
		if (monitor.isCanceled()) {
			throw new OperationCanceledException();
		}
	}
}
