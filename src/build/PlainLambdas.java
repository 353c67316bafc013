import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Turns the lambdas of compiled classes into ordinary classes, so that a class-data archive holds them ready: the JVM
 * of Java 17 links each lambda anew at every start, which takes about eight times as long. Run by the build on a copy
 * of the classes: {@code PlainLambdas FOLDER}. The same is done to what records leave to be put together
 * ({@link PlainRecord}). What it does not know (serializable lambdas, say) it leaves as it is.
 */
public final class PlainLambdas {
    private static final String METAFACTORY = "java/lang/invoke/LambdaMetafactory";

    private final Map<String, ClassNode> classes = new TreeMap<>();
    private final Map<String, byte[]> made = new TreeMap<>();

    public static void main(String[] folders) throws IOException {
        for (String folder : folders) {
            new PlainLambdas().rewrite(Path.of(folder));
        }
    }

    private void rewrite(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.filter(file -> file.toString().endsWith(".class")).forEach(this::read);
        }
        List.copyOf(classes.values()).forEach(this::rewrite);
        for (ClassNode node : classes.values()) {
            ClassWriter writer = new ClassWriter(0);
            node.accept(writer);
            made.put(node.name, writer.toByteArray());
        }
        for (Map.Entry<String, byte[]> one : made.entrySet()) {
            Files.write(folder.resolve(one.getKey() + ".class"), one.getValue());
        }
    }

    private void read(Path file) {
        try {
            ClassNode node = new ClassNode();
            new ClassReader(Files.readAllBytes(file)).accept(node, 0);
            classes.put(node.name, node);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void rewrite(ClassNode host) {
        int count = 0;
        for (MethodNode method : host.methods) {
            PlainRecord.rewrite(host, method);
            for (AbstractInsnNode at : method.instructions.toArray()) {
                if (at instanceof InvokeDynamicInsnNode lambda && isPlain(lambda)) {
                    String name = host.name + "$L" + count++;
                    made.put(name, new LambdaClass(host, name, lambda).write());
                    nestHost(host).nestMembers.add(name);
                    method.instructions.set(at, new MethodInsnNode(Opcodes.INVOKESTATIC, name, "of", lambda.desc));
                }
            }
        }
    }

    private static boolean isPlain(InvokeDynamicInsnNode lambda) {
        return lambda.bsm.getOwner().equals(METAFACTORY) && lambda.bsm.getName().equals("metafactory");
    }

    /** Members of one nest may call each other's private methods, which bodies of lambdas are. */
    private ClassNode nestHost(ClassNode node) {
        ClassNode nest = node.nestHostClass == null ? node : classes.get(node.nestHostClass);
        if (nest.nestMembers == null) { nest.nestMembers = new ArrayList<>(); }
        return nest;
    }
}
