package padwright.workbench.wizards;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;

import padwright.language.ide.server.LocalServer;
import padwright.language.start.FirstLines;
import padwright.language.start.PlanLines;
import padwright.language.start.PlanText;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.plan.Document;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workbench.Messages;
import padwright.workbench.session.Answers;
import padwright.workbench.session.LanguageSession;

/**
 * What was said of a plan that is to be written.
 *
 * @param template whose first lines it takes
 * @param first what its first lines say where there is no template
 */
record PlanDraft(String name, String title, String serial, ShopIndex.Entry system, Optional<ShopIndex.Entry> stock,
		Optional<ShopIndex.Entry> template, FirstLines first) {

	/**
	 * Its text, with a row for every key of the system. Not in the UI thread.
	 *
	 * @throws CoreException if the system or the template cannot be read
	 */
	String text() throws CoreException {
		String stockName = stock.map(ShopIndex.Entry::name).orElse("");
		KeySystem keys = read(system, Document::getSystems);
		PlanLines lines = template.isEmpty() ? first.lines()
				: PlanLines.of(read(template.get(), Document::getPlans), stockName);
		return new PlanText(name, title, system.name(), serial, stockName, LocalDate.now(), lines,
				EffectiveSystem.of(keys).keys().stream().map(EffectiveKey::name).toList()).toString();
	}

	private static <T extends Titled> T read(ShopIndex.Entry entry, Function<Document, List<T>> of)
			throws CoreException {
		Optional<LocalServer> server = LanguageSession.get().running();
		return server.flatMap(running -> Answers.await(() -> running.snapshot(entry.uri())))
				.filter(found -> !found.getContents().isEmpty())
				.map(found -> of.apply((Document) found.getContents().get(0)))
				.flatMap(all -> all.stream().filter(one -> entry.name().equals(one.getName())).findFirst())
				.orElseThrow(() -> new CoreException(Status.error(Messages.get("new.unreadEntry", entry.name()))));
	}
}
