package padwright.language.parser;

import java.util.List;

import org.antlr.runtime.ANTLRStringStream;

/** A text of which some passages are passed over, in their order and apart from each other. */
final class PassingOver extends ANTLRStringStream {

	private final List<Passage> passages;

	PassingOver(String text, List<Passage> passages) {
		super(text);
		this.passages = List.copyOf(passages);
	}

	List<Passage> passages() {
		return passages;
	}
}
