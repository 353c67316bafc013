import java.util.List;
import java.util.stream.Stream;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Writes out what a record's {@code equals}, {@code hashCode} and {@code toString} do, the way the JDK of Java 17 does
 * it, where the compiler leaves it to be put together at the first call.
 */
final class PlainRecord {
    private static final String BOOTSTRAP = "java/lang/runtime/ObjectMethods";
    private static final String TEXT = "java/lang/StringBuilder";

    private final ClassNode record;
    private final MethodNode to;
    private final List<Handle> parts;

    private PlainRecord(ClassNode record, MethodNode method, InvokeDynamicInsnNode from) {
        this.record = record;
        this.to = method;
        this.parts = Stream.of(from.bsmArgs).skip(2).map(Handle.class::cast).toList();
    }

    /** Rewrites the method if it is one of the three. */
    static void rewrite(ClassNode node, MethodNode method) {
        for (AbstractInsnNode at : method.instructions.toArray()) {
            if (at instanceof InvokeDynamicInsnNode from && from.bsm.getOwner().equals(BOOTSTRAP)) {
                PlainRecord plain = new PlainRecord(node, method, from);
                method.instructions.clear();
                method.localVariables = null;
                switch (method.name) {
                    case "equals" -> plain.equality();
                    case "hashCode" -> plain.hash();
                    case "toString" -> plain.text();
                    default -> throw new IllegalStateException("unknown: " + method.name);
                }
                return;
            }
        }
    }

    private void part(int of, Handle part) {
        to.visitVarInsn(Opcodes.ALOAD, of);
        if (of == 1) { to.visitTypeInsn(Opcodes.CHECKCAST, record.name); }
        to.visitFieldInsn(Opcodes.GETFIELD, record.name, part.getName(), part.getDesc());
    }

    private void call(String owner, String name, String type) {
        to.visitMethodInsn(Opcodes.INVOKESTATIC, owner, name, type, false);
    }

    private void equality() {
        Label differs = new Label();
        to.visitVarInsn(Opcodes.ALOAD, 1);
        to.visitTypeInsn(Opcodes.INSTANCEOF, record.name);
        to.visitJumpInsn(Opcodes.IFEQ, differs);
        for (Handle part : parts) {
            part(0, part);
            part(1, part);
            String type = part.getDesc();
            switch (Type.getType(type).getSort()) {
                case Type.BOOLEAN, Type.BYTE, Type.CHAR, Type.SHORT, Type.INT ->
                    to.visitJumpInsn(Opcodes.IF_ICMPNE, differs);
                case Type.LONG, Type.FLOAT, Type.DOUBLE -> {
                    call(Convert.wrapper(Type.getType(type)), "compare", "(" + type + type + ")I");
                    to.visitJumpInsn(Opcodes.IFNE, differs);
                }
                default -> {
                    String two = "(Ljava/lang/Object;Ljava/lang/Object;)Z";
                    call("java/util/Objects", "equals", two);
                    to.visitJumpInsn(Opcodes.IFEQ, differs);
                }
            }
        }
        to.visitInsn(Opcodes.ICONST_1);
        to.visitInsn(Opcodes.IRETURN);
        to.visitLabel(differs);
        to.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
        to.visitInsn(Opcodes.ICONST_0);
        to.visitInsn(Opcodes.IRETURN);
        to.visitMaxs(4, 2);
    }

    private void hash() {
        to.visitInsn(Opcodes.ICONST_0);
        for (Handle part : parts) {
            to.visitIntInsn(Opcodes.BIPUSH, 31);
            to.visitInsn(Opcodes.IMUL);
            part(0, part);
            Type type = Type.getType(part.getDesc());
            if (type.getSort() < Type.ARRAY) {
                call(Convert.wrapper(type), "hashCode", "(" + type.getDescriptor() + ")I");
            } else {
                call("java/util/Objects", "hashCode", "(Ljava/lang/Object;)I");
            }
            to.visitInsn(Opcodes.IADD);
        }
        to.visitInsn(Opcodes.IRETURN);
        to.visitMaxs(3, 1);
    }

    private void text() {
        to.visitTypeInsn(Opcodes.NEW, TEXT);
        to.visitInsn(Opcodes.DUP);
        to.visitMethodInsn(Opcodes.INVOKESPECIAL, TEXT, "<init>", "()V", false);
        String before = simpleName() + "[";
        for (Handle part : parts) {
            to.visitLdcInsn(before + part.getName() + "=");
            append("Ljava/lang/String;");
            part(0, part);
            Type type = Type.getType(part.getDesc());
            boolean isSmall = type.getSort() == Type.BYTE || type.getSort() == Type.SHORT;
            boolean isObject = type.getSort() >= Type.ARRAY;
            append(isObject ? "Ljava/lang/Object;" : isSmall ? "I" : type.getDescriptor());
            before = ", ";
        }
        to.visitLdcInsn(parts.isEmpty() ? before + "]" : "]");
        append("Ljava/lang/String;");
        String type = "()Ljava/lang/String;";
        to.visitMethodInsn(Opcodes.INVOKEVIRTUAL, TEXT, "toString", type, false);
        to.visitInsn(Opcodes.ARETURN);
        to.visitMaxs(3, 1);
    }

    private void append(String what) {
        String type = "(" + what + ")L" + TEXT + ";";
        to.visitMethodInsn(Opcodes.INVOKEVIRTUAL, TEXT, "append", type, false);
    }

    private String simpleName() {
        return record.innerClasses.stream().filter(inner -> inner.name.equals(record.name) && inner.innerName != null)
                .map(inner -> inner.innerName).findFirst()
                .orElse(record.name.substring(record.name.lastIndexOf('/') + 1));
    }
}
