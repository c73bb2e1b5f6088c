package padwright.workbench.session;

import java.util.Map;
import java.util.Optional;

import org.eclipse.core.resources.IMarker;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;

import com.google.gson.Gson;

/** A finding of the server as its marker keeps it: markers can hold texts and numbers only. */
public final class Finding {

	/** The type of the markers. */
	public static final String MARKER = "padwright.workbench.finding";

	static final String ATTRIBUTE = "padwright.finding";

	private static final Gson JSON = new MessageJsonHandler(Map.of()).getGson();

	private Finding() {
	}

	static String text(Diagnostic finding) {
		return JSON.toJson(finding);
	}

	/** What a marker stands for; nothing for a marker of another kind, or one that has gone. */
	public static Optional<Diagnostic> of(IMarker marker) {
		return Optional.ofNullable(marker.getAttribute(ATTRIBUTE, null))
				.map(text -> JSON.fromJson(text, Diagnostic.class));
	}
}
