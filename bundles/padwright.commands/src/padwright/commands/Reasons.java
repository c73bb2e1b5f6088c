package padwright.commands;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Failures of the disk in plain words. */
final class Reasons {

	private Reasons() {
	}

	static String of(IOException failure) {
		if (failure instanceof AccessDeniedException denied) {
			return "writing into " + Path.of(denied.getFile()).toAbsolutePath().getParent() + " is not allowed";
		}
		if (failure instanceof NoSuchFileException missing) {
			return missing.getFile() + " does not exist";
		}
		if (failure instanceof FileSystemException disk && disk.getReason() != null) {
			return disk.getReason();
		}
		return failure.getMessage() == null ? "the disk failed" : failure.getMessage();
	}
}
