package padwright.workbench.help;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import padwright.views.Palette;
import padwright.views.canvas.Bar;
import padwright.views.canvas.Colours;
import padwright.workbench.Messages;
import padwright.workbench.session.StatusLine;
import padwright.workbench.themes.Themes;

/** The user guide inside the window. */
public final class GuideView extends ViewPart {

	public static final String ID = "padwright.workbench.guide";

	static final String FIRST_PAGE = "index.html";

	/** The words of all pages, beside them. */
	private static final String WORDS = "words.js";
	private static final int SEARCH = 160;
	private static final String GUIDE = "padwright.guide";
	private static final int MARGIN = 12;
	private static final int TAB = 18;

	private final Deque<String> before = new ArrayDeque<>();
	private Optional<GuideSearch> words = Optional.empty();
	private Text search;
	private StyledText text;
	private Bar bar;
	private Themes themes;
	private Optional<GuidePage> page = Optional.empty();
	private String name = FIRST_PAGE;

	@Override
	public void createPartControl(Composite parent) {
		Composite whole = new Composite(parent, SWT.NONE);
		bar = new Bar(whole);
		bar.button(Messages.get("guide.back"), Messages.get("guide.backTip"), this::back);
		bar.button(Messages.get("guide.contents"), Messages.get("guide.contentsTip"), () -> go(FIRST_PAGE, ""));
		bar.button(Messages.get("guide.browser"), Messages.get("guide.browserTip"), this::browse);
		search = new Text(bar.row(), SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
		search.setMessage(Messages.get("guide.search"));
		search.setToolTipText(Messages.get("guide.searchTip"));
		search.setLayoutData(new RowData(SEARCH, SWT.DEFAULT));
		Bar.name(search, Messages.get("guide.search"));
		search.addListener(SWT.Modify, event -> find());
		search.addListener(SWT.DefaultSelection, event -> page.flatMap(found -> found.link(-1, true))
				.filter(first -> isFound()).ifPresent(first -> follow(first.target())));
		search.addListener(SWT.KeyDown, this::inSearch);
		text = new StyledText(whole, SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
		text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
		text.setTabs(TAB);
		text.setCaret(null);
		Bar.fill(text);
		Bar.name(text, Messages.get("guide.name"));
		text.addListener(SWT.MouseUp, this::clicked);
		text.addListener(SWT.Traverse, this::toLink);
		text.addListener(SWT.KeyDown, this::inText);
		themes = new Themes(this::paint);
		themes.follow();
		paint(themes.palette());
		show(FIRST_PAGE, "");
	}

	/** Shows a page, from the heading with this anchor on, if it has one. */
	void go(String next, String anchor) {
		before.push(name);
		name = next;
		forget();
		show(next, anchor);
	}

	private void back() {
		if (!before.isEmpty()) {
			name = before.pop();
			forget();
			show(name, "");
		}
	}

	/** Takes the words away that were searched for. */
	private void forget() {
		if (!search.getText().isEmpty()) {
			search.setText("");
		}
	}

	private void show(String next, String anchor) {
		name = next;
		read(next).map(GuidePage::of).ifPresent(read -> {
			show(read);
			text.setTopIndex(text.getLineAtOffset(read.heading(anchor).orElse(0)));
		});
	}

	private void show(GuidePage next) {
		page = Optional.of(next);
		text.setText(next.text());
		paint(themes.palette());
	}

	private Optional<String> read(String file) {
		try (InputStream in = url(file).openStream()) {
			return Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
		} catch (IOException notThere) {
			StatusLine.tell(Messages.get("guide.at", notThere.getMessage()), true);
			return Optional.empty();
		}
	}

	private boolean isFound() {
		return !search.getText().isBlank();
	}

	/** Shows what is found of the words that are typed; the page again once they are taken away. */
	private void find() {
		if (isFound()) {
			words = words.or(() -> read(WORDS).map(GuideSearch::new));
			String query = search.getText();
			words.ifPresent(all -> show(GuidePage.found(query, all.find(query), Messages.get("guide.nothing"))));
		} else {
			show(name, "");
		}
	}

	private void inSearch(Event event) {
		if (event.keyCode == SWT.ARROW_DOWN) {
			text.setFocus();
			page.flatMap(found -> found.link(-1, true)).ifPresent(this::choose);
			event.doit = false;
		} else if (event.keyCode == SWT.ESC) {
			forget();
		}
	}

	/** Tab goes from link to link, as in a browser, and out of the text behind the last one. */
	private void toLink(Event event) {
		boolean forward = event.detail == SWT.TRAVERSE_TAB_NEXT;
		if (forward || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
			Optional<GuidePage.Span> link = page.flatMap(shown -> shown.link(chosen(), forward));
			link.ifPresent(this::choose);
			event.doit = link.isEmpty();
		} else if (event.detail == SWT.TRAVERSE_RETURN) {
			event.doit = false;
		}
	}

	/** Where the link begins that is chosen; in front of all where none is. */
	private int chosen() {
		return text.getSelectionCount() == 0 ? -1 : text.getSelectionRange().x;
	}

	private void choose(GuidePage.Span link) {
		text.setSelection(link.start(), link.start() + link.length());
		text.showSelection();
	}

	private void inText(Event event) {
		if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
			page.flatMap(shown -> shown.link(chosen() - 1, true)).filter(link -> link.start() == chosen())
					.ifPresent(link -> follow(link.target()));
		}
	}

	private static URL url(String page) {
		return Platform.getBundle(GUIDE).getEntry(Messages.get("guide.folder") + page);
	}

	private void browse() {
		try {
			String address = FileLocator.toFileURL(url(name)).toString();
			if (!Program.launch(address)) {
				StatusLine.tell(Messages.get("guide.at", address), false);
			}
		} catch (IOException notThere) {
			StatusLine.tell(Messages.get("guide.at", notThere.getMessage()), true);
		}
	}

	private void clicked(Event event) {
		int offset = text.getOffsetAtPoint(new Point(event.x, event.y));
		page.stream().flatMap(shown -> shown.spans().stream()).filter(span -> span.look() == GuidePage.Look.LINK
				&& offset >= span.start() && offset < span.start() + span.length()).findFirst()
				.ifPresent(link -> follow(link.target()));
	}

	private void follow(String target) {
		if (target.contains(":")) {
			Program.launch(target);
		} else {
			String[] parts = target.split("#", 2);
			go(parts[0].isEmpty() ? name : parts[0], parts.length > 1 ? parts[1] : "");
		}
	}

	private void paint(Palette palette) {
		bar.setPalette(palette);
		text.getParent().setBackground(Colours.of(palette.ground()));
		text.setBackground(Colours.of(palette.ground()));
		text.setForeground(Colours.of(palette.ink()));
		text.setStyleRanges(new StyleRange[0]);
		page.stream().flatMap(shown -> shown.spans().stream()).filter(span -> span.length() > 0)
				.forEach(span -> text.setStyleRange(style(span, palette)));
	}

	private static StyleRange style(GuidePage.Span span, Palette palette) {
		StyleRange style = new StyleRange();
		style.start = span.start();
		style.length = span.length();
		switch (span.look()) {
		case TITLE -> style.font = JFaceResources.getHeaderFont();
		case HEADING -> style.font = JFaceResources.getBannerFont();
		case STRONG -> style.fontStyle = SWT.BOLD;
		case EMPHASIS -> style.fontStyle = SWT.ITALIC;
		case CODE -> style.font = JFaceResources.getTextFont();
		case LINK -> {
			style.underline = true;
			style.underlineStyle = SWT.UNDERLINE_LINK;
			style.foreground = Colours.of(palette.accent());
		}
		}
		return style;
	}

	/** What can be read. */
	public String text() {
		return text.getText();
	}

	@Override
	public void setFocus() {
		text.setFocus();
	}

	@Override
	public void dispose() {
		themes.unfollow();
		super.dispose();
	}
}
