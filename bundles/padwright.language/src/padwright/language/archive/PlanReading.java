package padwright.language.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.resource.XtextResource;

import com.google.inject.Injector;

import padwright.model.plan.Document;
import padwright.model.plan.Plan;

/**
 * Reads plans of one shop, however many: several at once, each let go of when what is wanted of it was taken. So an archive
 * takes no more memory than that.
 */
public final class PlanReading {

	private final List<FileState> sources;
	private final Supplier<Injector> languages;
	private final int threads;

	/**
	 * @param top the folder of the shop
	 * @param all its files, absolute
	 * @param languages makes the services of the language, anew for each thread
	 */
	public PlanReading(Path top, Collection<Path> all, Supplier<Injector> languages, int threads) {
		this.sources = all.stream().map(file -> FileState.of(file, top.relativize(file).toString(), ResultStore.none(), Map.of()))
				.filter(FileState::source).toList();
		this.languages = languages;
		this.threads = threads;
	}

	/**
	 * What is wanted of each plan, in the order of the files and the plans in each.
	 *
	 * @param wanted takes it, in several threads; it must keep nothing of the plan's document
	 * @param unreadable told of files that cannot be used, and why, in their order
	 */
	public <T> List<T> of(Collection<Path> files, Function<Plan, T> wanted, BiConsumer<Path, String> unreadable) {
		List<Path> order = List.copyOf(files);
		List<List<T>> taken = new ArrayList<>(Collections.nCopies(order.size(), List.of()));
		List<Optional<String>> faults = new ArrayList<>(Collections.nCopies(order.size(), Optional.empty()));
		AtomicInteger next = new AtomicInteger();
		inParallel(Math.max(1, Math.min(threads, order.size())), worker -> {
			for (int at = next.getAndIncrement(); at < order.size(); at = next.getAndIncrement()) {
				List<T> plans = new ArrayList<>();
				faults.set(at, worker.read(order.get(at), FileText.of(order.get(at), Map.of()),
						document -> plans(document).forEach(plan -> plans.add(wanted.apply(plan)))));
				taken.set(at, plans);
			}
		});
		for (int at = 0; at < order.size(); at++) {
			Path file = order.get(at);
			faults.get(at).ifPresent(why -> unreadable.accept(file, why));
		}
		return taken.stream().flatMap(List::stream).toList();
	}

	private static List<Plan> plans(XtextResource document) {
		List<Plan> plans = new ArrayList<>();
		for (EObject root : document.getContents()) {
			if (root instanceof Document whole) {
				plans.addAll(whole.getPlans());
			}
		}
		return plans;
	}

	private void inParallel(int workers, Consumer<Worker> work) {
		AtomicReference<Throwable> failure = new AtomicReference<>();
		Thread[] all = new Thread[workers];
		Arrays.setAll(all, each -> new Thread(() -> work.accept(worker()), "padwright-reading-" + each));
		for (Thread thread : all) {
			thread.setDaemon(true);
			thread.setUncaughtExceptionHandler((failed, reason) -> failure.compareAndSet(null, reason));
			thread.start();
		}
		for (Thread thread : all) {
			CheckWorkers.await(thread);
		}
		if (failure.get() != null) {
			throw new IllegalStateException("reading failed: " + failure.get(), failure.get());
		}
	}

	private Worker worker() {
		Worker worker = new Worker(languages.get());
		worker.addSources(sources, state -> state.text(Map.of()));
		return worker;
	}
}
