import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * Looks at every page of the guide in a browser, as wide as a telephone and as a desk's screen: nothing wider than the window, every picture
 * drawn, navigation beside the text or below it but not over it, no complaint of the browser; then follows every link to
 * where it leads, and searches. Takes the folder of the guide, one for the pictures, the browser and its driver.
 */
final class GuideInBrowser {

	private static final int[] WIDTHS = { 400, 1400 };
	private static final int HEIGHT = 1000;

	/** What is wrong with the page that is shown; each in a few words. */
	private static final String FAULTS = """
			const faults = [];
			const page = document.documentElement;
			if (page.scrollWidth > page.clientWidth) {
				const wide = [...document.querySelectorAll("body *")]
					.filter(element => element.getBoundingClientRect().right > page.clientWidth)
					.map(element => element.tagName.toLowerCase() + " " + element.textContent.trim().slice(0, 30));
				faults.push(page.scrollWidth + " pixels wide in a window of " + page.clientWidth + ": " + wide.slice(0, 3));
			}
			for (const image of document.images) {
				if (!image.complete || image.naturalWidth === 0) {
					faults.push("no picture " + image.getAttribute("src"));
				} else if (image.getBoundingClientRect().width < 50) {
					faults.push("a picture too small to see: " + image.getAttribute("src"));
				}
			}
			const text = document.querySelector("main").getBoundingClientRect();
			for (const other of document.querySelectorAll("nav, header, footer")) {
				const place = other.getBoundingClientRect();
				if (place.left < text.right - 1 && text.left < place.right - 1 && place.top < text.bottom - 1 && text.top < place.bottom - 1) {
					faults.push(other.tagName.toLowerCase() + " over the text");
				}
			}
			if (text.width < 300) {
				faults.push("text only " + text.width + " pixels wide");
			}
			return faults;
			""";

	/** Whether the place that the address names is on the screen; a page without such a place is shown from its top. */
	private static final String ARRIVED = """
			const name = decodeURIComponent(location.hash.slice(1));
			if (!document.querySelector("main")) {
				return false;
			}
			const place = name ? document.getElementById(name) : document.body;
			return place !== null && (!name || place.getBoundingClientRect().top < window.innerHeight);
			""";

	private final ChromeDriver browser;
	private final Path pictures;
	private final List<String> faults = new ArrayList<>();

	private GuideInBrowser(ChromeDriver browser, Path pictures) {
		this.browser = browser;
		this.pictures = pictures;
	}

	public static void main(String[] args) throws IOException {
		// It says that it knows no developer tools of this very version; none are used.
		Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE);
		Path guide = Path.of(args[0]).toAbsolutePath();
		ChromeDriverService driver = new ChromeDriverService.Builder().usingDriverExecutable(Path.of(args[3]).toFile()).build();
		ChromeDriver browser = new ChromeDriver(driver, options(args[2]));
		try {
			GuideInBrowser looked = new GuideInBrowser(browser, Path.of(args[1]));
			List<Path> pages = pages(guide);
			int links = looked.look(guide, pages);
			looked.faults.forEach(System.err::println);
			System.out.printf("guide: %d pages at %d widths, %d links followed, %d faults%n", pages.size(), WIDTHS.length, links,
					looked.faults.size());
			if (!looked.faults.isEmpty() || pages.isEmpty() || links == 0) {
				System.exit(1);
			}
		} finally {
			browser.quit();
		}
	}

	private static ChromeOptions options(String executable) {
		ChromeOptions options = new ChromeOptions();
		options.setBinary(executable);
		// Without a sandbox, since a build may run as root; the pages are our own.
		options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking",
				"--disable-component-update", "--disable-sync", "--disable-quic", "--disable-dev-shm-usage", "--hide-scrollbars");
		return options;
	}

	private static List<Path> pages(Path guide) throws IOException {
		try (Stream<Path> files = Files.walk(guide)) {
			return files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
		}
	}

	private int look(Path guide, List<Path> pages) {
		Set<String> links = new TreeSet<>();
		for (int width : WIDTHS) {
			resize(width);
			for (Path page : pages) {
				browser.get(page.toUri().toString());
				found(page, width, faultsHere());
				picture(guide.relativize(page) + "-" + width);
				links.addAll(links());
			}
		}
		links.forEach(this::follow);
		search(guide.resolve("index.html"), "feeler");
		search(guide.resolve("de/index.html"), "F\u00fchler");
		return links.size();
	}

	/** The window of a browser may not become as narrow as a telephone; what it shows can. */
	private void resize(int width) {
		browser.manage().window().setSize(new Dimension(Math.max(width, 600), HEIGHT));
		browser.executeCdpCommand("Emulation.setDeviceMetricsOverride",
				java.util.Map.of("width", width, "height", HEIGHT, "deviceScaleFactor", 1, "mobile", false));
	}

	@SuppressWarnings("unchecked")
	private List<String> faultsHere() {
		List<String> here = new ArrayList<>((List<String>) browser.executeScript(FAULTS));
		browser.manage().logs().get("browser").forEach(entry -> here.add(entry.getMessage()));
		return here;
	}

	private void found(Path page, int width, List<String> here) {
		here.forEach(fault -> faults.add(page + ", " + width + " wide: " + fault));
	}

	@SuppressWarnings("unchecked")
	private List<String> links() {
		return (List<String>) browser.executeScript("return [...document.links].map(link => link.href)");
	}

	private void follow(String link) {
		if (!link.startsWith("file:")) {
			faults.add(link + " leads out of the guide, where nobody may be connected");
			return;
		}
		browser.get(link);
		if (!Boolean.TRUE.equals(browser.executeScript(ARRIVED))) {
			faults.add(link + " leads nowhere");
		}
	}

	/** A word that the guide is full of is found, and the first that is found opens. */
	private void search(Path start, String word) {
		browser.get(start.toUri().toString());
		WebElement field = browser.findElement(By.cssSelector("#search input"));
		field.sendKeys(word);
		List<WebElement> found = browser.findElements(By.cssSelector("#search li a"));
		if (found.isEmpty()) {
			faults.add(start + ": no page found for " + word);
			return;
		}
		String first = found.get(0).getAttribute("href");
		found.get(0).click();
		if (!first.equals(browser.getCurrentUrl())) {
			faults.add(start + ": what is found for " + word + " does not open");
		}
	}

	private void picture(String name) {
		try {
			Files.createDirectories(pictures);
			Files.write(pictures.resolve(name.replace('/', '-').replace(".html", "") + ".png"), browser.getScreenshotAs(OutputType.BYTES));
		} catch (IOException failed) {
			throw new UncheckedIOException(failed);
		}
	}
}
