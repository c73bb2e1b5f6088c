package padwright.workbench.app;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.equinox.app.IApplicationContext;

import padwright.language.ide.server.LocalServer;
import padwright.language.shop.ShopFolder;
import padwright.workbench.editor.Places;
import padwright.workbench.session.Documents;
import padwright.workbench.session.OpenShops;

/** The shops and documents that the workbench was started with. */
final class Arguments {

	private static final String OPEN = "open";

	private final List<Path> paths;

	private Arguments(List<Path> paths) {
		this.paths = paths;
	}

	/** What is behind the word "open", not an option of the platform, and there on disk. */
	static Arguments of(IApplicationContext context) {
		Map<?, ?> all = context.getArguments();
		List<String> given = Arrays.asList((String[]) all.get(IApplicationContext.APPLICATION_ARGS));
		int first = given.contains(OPEN) ? given.indexOf(OPEN) + 1 : given.size();
		return new Arguments(given.subList(first, given.size()).stream().filter(Arguments::isThere).map(Path::of)
				.toList());
	}

	private static boolean isThere(String argument) {
		try {
			return Files.exists(Path.of(argument));
		} catch (InvalidPathException otherwiseMeant) {
			return false;
		}
	}

	/** Opens them; called when the window is there. */
	void open() {
		for (Path path : paths) {
			try {
				OpenShops.open(path, null);
			} catch (CoreException unopened) {
				ILog.of(Arguments.class).log(unopened.getStatus());
			}
			if (Files.isRegularFile(path)) {
				Documents.file(LocalServer.uri(ShopFolder.real(path))).filter(IFile::exists)
						.ifPresent(Places::editor);
			}
		}
	}
}
