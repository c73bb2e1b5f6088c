package padwright.language.ide.index;

import java.nio.charset.StandardCharsets;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.parser.IEncodingProvider;

/** All documents are in UTF-8, whatever the machine's own encoding is. */
public final class Utf8 implements IEncodingProvider {

	@Override
	public String getEncoding(URI document) {
		return StandardCharsets.UTF_8.name();
	}
}
