import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Boxing, unboxing, widening and casts between what is given and what is wanted. */
final class Convert {
    private static final String WRAPPERS = "ZBoolean BByte CCharacter SShort IInteger JLong FFloat DDouble";

    private Convert() {}

    static void value(MethodVisitor to, Type given, Type seen, Type wanted) {
        boolean isGivenPlain = given.getSort() < Type.ARRAY;
        boolean isWantedPlain = wanted.getSort() < Type.ARRAY;
        if (isGivenPlain && isWantedPlain) {
            widen(to, given, wanted);
        } else if (isGivenPlain) {
            String box = wrapper(given);
            String type = "(" + given.getDescriptor() + ")L" + box + ";";
            to.visitMethodInsn(Opcodes.INVOKESTATIC, box, "valueOf", type, false);
        } else if (isWantedPlain) {
            unbox(to, given, seen, wanted);
        } else if (!wanted.equals(given) && !wanted.getInternalName().equals("java/lang/Object")) {
            to.visitTypeInsn(Opcodes.CHECKCAST, wanted.getInternalName());
        }
    }

    private static void unbox(MethodVisitor to, Type given, Type seen, Type wanted) {
        Type plain = plain(seen, wanted);
        String box = wrapper(plain);
        if (!given.getInternalName().equals(box)) { to.visitTypeInsn(Opcodes.CHECKCAST, box); }
        String method = plain.getClassName() + "Value";
        to.visitMethodInsn(Opcodes.INVOKEVIRTUAL, box, method, "()" + plain.getDescriptor(), false);
        widen(to, plain, wanted);
    }

    private static Type plain(Type boxed, Type otherwise) {
        for (String pair : WRAPPERS.split(" ")) {
            if (boxed.getInternalName().equals("java/lang/" + pair.substring(1))) {
                return Type.getType(pair.substring(0, 1));
            }
        }
        return otherwise;
    }

    static String wrapper(Type plain) {
        for (String pair : WRAPPERS.split(" ")) {
            if (pair.startsWith(plain.getDescriptor())) { return "java/lang/" + pair.substring(1); }
        }
        throw new IllegalStateException("no wrapper of " + plain);
    }

    private static void widen(MethodVisitor to, Type from, Type wanted) {
        if (from.equals(wanted)) { return; }
        switch (from.getDescriptor() + wanted.getDescriptor()) {
            case "IJ" -> to.visitInsn(Opcodes.I2L);
            case "ID" -> to.visitInsn(Opcodes.I2D);
            case "IF" -> to.visitInsn(Opcodes.I2F);
            case "JD" -> to.visitInsn(Opcodes.L2D);
            case "JF" -> to.visitInsn(Opcodes.L2F);
            case "FD" -> to.visitInsn(Opcodes.F2D);
            default -> throw new IllegalStateException("no way from " + from + " to " + wanted);
        }
    }
}
