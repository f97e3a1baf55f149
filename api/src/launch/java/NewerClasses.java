import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.classfile.ClassBuilder;
import java.lang.classfile.ClassElement;
import java.lang.classfile.ClassFile;
import java.lang.classfile.ClassFileVersion;
import java.lang.classfile.ClassHierarchyResolver;
import java.lang.classfile.ClassTransform;
import java.lang.classfile.CodeTransform;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Writes what is in jars anew where it is in a form older than Java 6: the cache of classes takes no
 * class without stack maps (JVMS 4.7.4), so that a library which still runs on Java 5 would be read and
 * checked at every start. The classes do what they did. The launcher runs this, on a JDK 25 or newer,
 * before it makes the cache; a jar that needs nothing, or is signed, stays as it is.
 */
final class NewerClasses {

  /** The first class file version with stack maps. */
  private static final int WITH_STACK_MAPS = ClassFile.JAVA_6_VERSION;

  /** The first in which they are a must, so that nothing falls back to the old way of checking. */
  private static final int WRITTEN = ClassFile.JAVA_8_VERSION;

  private final ClassFile classFile;

  private NewerClasses(ClassLoader library) {
    ClassHierarchyResolver kinds =
        ClassHierarchyResolver.ofResourceParsing(library)
            .orElse(ClassHierarchyResolver.defaultResolver());
    this.classFile = ClassFile.of(ClassFile.ClassHierarchyResolverOption.of(kinds));
  }

  /**
   * Goes through jars.
   *
   * @param jars their paths
   */
  public static void main(String[] jars) throws IOException {
    for (String jar : jars) {
      renew(Path.of(jar));
    }
  }

  private static void renew(Path jar) throws IOException {
    try (ZipFile library = new ZipFile(jar.toFile())) {
      List<? extends ZipEntry> entries = library.stream().toList();
      if (entries.stream().anyMatch(NewerClasses::isSignature) || !anyOld(library, entries)) {
        return;
      }
      Path written = Files.createTempFile(jar.toAbsolutePath().getParent(), "newer", ".jar");
      try (URLClassLoader classes = new URLClassLoader(new URL[] {jar.toUri().toURL()})) {
        new NewerClasses(classes).copy(library, entries, written);
        // Two starts at once write the same; a cache goes by a jar's size and time.
        Files.setLastModifiedTime(written, Files.getLastModifiedTime(jar));
        if (written.toFile().setReadable(true, false)) {
          Files.move(
              written, jar, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        }
      } finally {
        Files.deleteIfExists(written);
      }
    }
  }

  private static boolean isSignature(ZipEntry entry) {
    return entry.getName().matches("META-INF/[^/]*\\.(SF|RSA|DSA|EC)");
  }

  private static boolean anyOld(ZipFile library, List<? extends ZipEntry> entries) throws IOException {
    for (ZipEntry entry : entries) {
      if (isClass(entry) && isOld(bytes(library, entry))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isClass(ZipEntry entry) {
    return entry.getName().endsWith(".class");
  }

  // Bytes 6 and 7 of a class file are its version (JVMS 4.1).
  private static boolean isOld(byte[] given) {
    return ((given[6] & 0xff) << 8 | given[7] & 0xff) < WITH_STACK_MAPS;
  }

  private static byte[] bytes(ZipFile library, ZipEntry entry) throws IOException {
    return library.getInputStream(entry).readAllBytes();
  }

  private void copy(ZipFile library, List<? extends ZipEntry> entries, Path written) throws IOException {
    try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(written));
        ZipOutputStream to = new ZipOutputStream(file)) {
      for (ZipEntry entry : entries) {
        byte[] given = bytes(library, entry);
        ZipEntry same = new ZipEntry(entry.getName());
        same.setTime(entry.getTime());
        to.putNextEntry(same);
        to.write(isClass(entry) && isOld(given) ? newer(given) : given);
        to.closeEntry();
      }
    }
  }

  private byte[] newer(byte[] given) {
    ClassTransform whole =
        ClassTransform.transformingMethodBodies(CodeTransform.ACCEPT_ALL)
            .andThen(NewerClasses::ofNewerVersion);
    return classFile.transformClass(classFile.parse(given), whole);
  }

  private static void ofNewerVersion(ClassBuilder to, ClassElement element) {
    if (element instanceof ClassFileVersion) {
      to.withVersion(WRITTEN, 0);
    } else {
      to.with(element);
    }
  }
}
