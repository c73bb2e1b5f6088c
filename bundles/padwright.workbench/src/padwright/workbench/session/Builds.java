package padwright.workbench.session;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.xtext.ide.server.ILanguageServerAccess.IBuildListener;
import org.eclipse.xtext.resource.IResourceDescription.Delta;

/** Passes on which documents were read anew, by the URIs that the server knows them by. */
public final class Builds implements IBuildListener {

	private final List<Consumer<Set<String>>> listeners = new CopyOnWriteArrayList<>();

	/** {@code listener} is called in a thread of the server and must be quick. */
	public void add(Consumer<Set<String>> listener) {
		listeners.add(listener);
	}

	public void remove(Consumer<Set<String>> listener) {
		listeners.remove(listener);
	}

	@Override
	public void afterBuild(List<Delta> deltas) {
		Set<String> read = deltas.stream().map(delta -> delta.getUri().toString()).collect(Collectors.toSet());
		listeners.forEach(listener -> listener.accept(read));
	}
}
