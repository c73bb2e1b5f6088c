package padwright.workbench.benchmode;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.bench.Told.Tone;

class SystemVoiceTest {

	private static final int GLANCE = 10_000_000;
	private static final int GLANCES = 1_000;

	@TempDir
	private Path folder;

	@Test
	void theFirstProgramOnThePathSpeaksTheLanguageOfTheUser() throws Exception {
		Path heard = folder.resolve("heard");
		Path program = Files.writeString(folder.resolve("espeak-ng"),
				"#!/bin/sh\necho \"$@\" >'" + heard + ".new'; mv '" + heard + ".new' '" + heard + "'\n");
		Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
		SystemVoice voice = SystemVoice.find("/nowhere" + File.pathSeparator + folder, Locale.GERMAN).orElseThrow();
		voice.say("Auf 3: 0,5.");
		for (int glance = 0; glance < GLANCES && !Files.exists(heard); glance++) {
			LockSupport.parkNanos(GLANCE);
		}
		assertEquals("-v de Auf 3: 0,5.\n", Files.readString(heard));
	}

	@Test
	void withoutAProgramThereIsNoVoice() {
		assertEquals(Optional.empty(), SystemVoice.find(folder.toString(), Locale.ENGLISH).map(voice -> "voice"));
		assertEquals(Optional.empty(), SystemVoice.find(null, Locale.ENGLISH).map(voice -> "voice"));
	}

	@Test
	void tonesAreToldApart() {
		assertTrue(Tones.hertz(Tone.SLIDES) > Tones.hertz(Tone.DRAGS) && Tones.hertz(Tone.DRAGS) > Tones.hertz(Tone.WRONG));
	}
}
