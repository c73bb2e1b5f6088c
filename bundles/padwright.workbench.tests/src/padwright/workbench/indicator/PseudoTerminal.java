package padwright.workbench.indicator;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A terminal that the system makes up, as a port with an indicator at its other end; unplugged when it is closed. */
public final class PseudoTerminal implements AutoCloseable {

	private final Process system;
	private final Path port;

	/** @param port is made a link to it */
	public PseudoTerminal(Path port) throws IOException {
		this.port = port;
		system = new ProcessBuilder("script", "-qfc", "stty raw -echo; tty; exec sleep 60", "/dev/null")
				.redirectErrorStream(true).start();
		BufferedReader said = new BufferedReader(new InputStreamReader(system.getInputStream(), StandardCharsets.US_ASCII));
		String name = said.readLine();
		if (name == null || !name.startsWith("/dev/")) {
			throw new IOException("no terminal but " + name);
		}
		Files.createSymbolicLink(port, Path.of(name.strip()));
	}

	/** The indicator sends something. */
	public void send(String characters) throws IOException {
		system.getOutputStream().write(characters.getBytes(StandardCharsets.US_ASCII));
		system.getOutputStream().flush();
	}

	@Override
	public void close() throws IOException {
		Files.deleteIfExists(port);
		system.descendants().forEach(ProcessHandle::destroyForcibly);
		system.destroyForcibly();
	}
}
