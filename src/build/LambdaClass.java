import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;

/** One lambda as a class: its fields are what it captured, its method calls the body. */
final class LambdaClass {
    private final ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    private final String name;
    private final InvokeDynamicInsnNode from;
    private final Type[] captured;
    private final Type sam;
    private final Handle body;
    private final Type seen;

    LambdaClass(ClassNode host, String name, InvokeDynamicInsnNode from) {
        this.name = name;
        this.from = from;
        this.captured = Type.getArgumentTypes(from.desc);
        this.sam = (Type) from.bsmArgs[0];
        this.body = (Handle) from.bsmArgs[1];
        this.seen = (Type) from.bsmArgs[2];
        String[] implemented = {Type.getReturnType(from.desc).getInternalName()};
        int access = Opcodes.ACC_FINAL | Opcodes.ACC_SYNTHETIC | Opcodes.ACC_SUPER;
        out.visit(host.version, access, name, null, "java/lang/Object", implemented);
        out.visitNestHost(host.nestHostClass == null ? host.name : host.nestHostClass);
    }

    byte[] write() {
        for (int i = 0; i < captured.length; i++) {
            int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL;
            out.visitField(access, "c" + i, captured[i].getDescriptor(), null, null);
        }
        constructor();
        if (captured.length == 0) { single(); }
        factory();
        method();
        out.visitEnd();
        return out.toByteArray();
    }

    private String constructorType() { return Type.getMethodDescriptor(Type.VOID_TYPE, captured); }

    private void constructor() {
        MethodVisitor to = out.visitMethod(Opcodes.ACC_PRIVATE, "<init>", constructorType(), null, null);
        to.visitVarInsn(Opcodes.ALOAD, 0);
        to.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
        int slot = 1;
        for (int i = 0; i < captured.length; i++) {
            to.visitVarInsn(Opcodes.ALOAD, 0);
            to.visitVarInsn(captured[i].getOpcode(Opcodes.ILOAD), slot);
            to.visitFieldInsn(Opcodes.PUTFIELD, name, "c" + i, captured[i].getDescriptor());
            slot += captured[i].getSize();
        }
        end(to, Opcodes.RETURN);
    }

    /** What captures nothing is made once. */
    private void single() {
        int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL;
        out.visitField(access, "ONE", "L" + name + ";", null, null);
        MethodVisitor to = out.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
        create(to);
        to.visitFieldInsn(Opcodes.PUTSTATIC, name, "ONE", "L" + name + ";");
        end(to, Opcodes.RETURN);
    }

    private void factory() {
        MethodVisitor to = out.visitMethod(Opcodes.ACC_STATIC, "of", from.desc, null, null);
        if (captured.length == 0) {
            to.visitFieldInsn(Opcodes.GETSTATIC, name, "ONE", "L" + name + ";");
        } else {
            create(to);
        }
        end(to, Opcodes.ARETURN);
    }

    private void create(MethodVisitor to) {
        to.visitTypeInsn(Opcodes.NEW, name);
        to.visitInsn(Opcodes.DUP);
        int slot = 0;
        for (Type type : captured) {
            to.visitVarInsn(type.getOpcode(Opcodes.ILOAD), slot);
            slot += type.getSize();
        }
        to.visitMethodInsn(Opcodes.INVOKESPECIAL, name, "<init>", constructorType(), false);
    }

    private void method() {
        MethodVisitor to = out.visitMethod(Opcodes.ACC_PUBLIC, from.name, sam.getDescriptor(), null, null);
        boolean makes = body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        if (makes) {
            to.visitTypeInsn(Opcodes.NEW, body.getOwner());
            to.visitInsn(Opcodes.DUP);
        }
        List<Type> wanted = wanted();
        for (int i = 0; i < captured.length; i++) {
            to.visitVarInsn(Opcodes.ALOAD, 0);
            to.visitFieldInsn(Opcodes.GETFIELD, name, "c" + i, captured[i].getDescriptor());
        }
        int slot = 1;
        Type[] given = sam.getArgumentTypes();
        for (int i = 0; i < given.length; i++) {
            to.visitVarInsn(given[i].getOpcode(Opcodes.ILOAD), slot);
            slot += given[i].getSize();
            Convert.value(to, given[i], seen.getArgumentTypes()[i], wanted.get(captured.length + i));
        }
        to.visitMethodInsn(call(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
        Type result = makes ? Type.getObjectType(body.getOwner()) : Type.getReturnType(body.getDesc());
        giveBack(to, result);
    }

    private void giveBack(MethodVisitor to, Type result) {
        Type asked = sam.getReturnType();
        if (asked.getSort() != Type.VOID) {
            Convert.value(to, result, result, asked);
        } else if (result.getSize() > 0) { to.visitInsn(result.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP); }
        end(to, asked.getOpcode(Opcodes.IRETURN));
    }

    /** What the body takes, the object it is called on first. */
    private List<Type> wanted() {
        List<Type> all = new ArrayList<>();
        if (body.getTag() != Opcodes.H_INVOKESTATIC && body.getTag() != Opcodes.H_NEWINVOKESPECIAL) {
            all.add(Type.getObjectType(body.getOwner()));
        }
        all.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
        return all;
    }

    private int call() {
        return switch (body.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    }

    private static void end(MethodVisitor to, int with) {
        to.visitInsn(with);
        to.visitMaxs(0, 0);
        to.visitEnd();
    }
}
