package padwright.language.parser;

import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;

import org.antlr.runtime.CommonToken;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenSource;

/** The tokens of a text, with one hidden token of the invalid type in place of each passage. */
final class PassingTokens implements TokenSource {

	private final TokenSource all;
	private final PassingOver text;
	private final Iterator<Passage> passages;
	private final Map<Token, String> messages = new HashMap<>();
	private Passage next;

	PassingTokens(TokenSource all, PassingOver text) {
		this.all = all;
		this.text = text;
		this.passages = text.passages().iterator();
		advance();
	}

	private void advance() {
		next = passages.hasNext() ? passages.next() : null;
	}

	@Override
	public Token nextToken() {
		Token token = all.nextToken();
		if (next == null || token.getType() == Token.EOF || start(token) < next.start()) {
			return token;
		}
		CommonToken last = (CommonToken) token;
		while (last.getStopIndex() + 1 < next.end()) {
			last = (CommonToken) all.nextToken();
		}
		return passage(start(token), last.getStopIndex());
	}

	private static int start(Token token) {
		return ((CommonToken) token).getStartIndex();
	}

	private Token passage(int start, int stop) {
		Token passage = new CommonToken(text, Token.INVALID_TOKEN_TYPE, Token.HIDDEN_CHANNEL, start, stop);
		messages.put(passage, next.message());
		advance();
		return passage;
	}

	/** Why a passage cannot be read; null where nothing is known. */
	String message(Token passage) {
		return messages.get(passage);
	}

	@Override
	public String getSourceName() {
		return all.getSourceName();
	}
}
