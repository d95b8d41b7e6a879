import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Turns the lambdas of a jar's own classes into plain classes, and {@code equals} and {@code hashCode} of its records into plain code, as a
 * compiler might have done. Java makes the class of a lambda when it is first met, and even where an archive of classes holds it, finding
 * it takes a cold program some 0.2 ms: a tenth of a first answer. What compares a record of a dozen components is made of method handles,
 * which takes some 35 ms.
 *
 * <p>Run as {@code java -cp asm.jar LambdaClasses.java IN.jar OUT.jar PREFIX}; PREFIX says which classes are the jar's own.
 */
public final class LambdaClasses {
    private static final String METAFACTORY = "java/lang/invoke/LambdaMetafactory";
    private static final String OF_RECORDS = "java/lang/runtime/ObjectMethods";
    private static final String ONLY = "ONLY";
    private static final String MAKE = "make";
    private static final String OBJECT = "java/lang/Object";

    /** Classes to write, by name, in the order of the jar. */
    private final Map<String, byte[]> classes = new LinkedHashMap<>();

    /** New members of each nest, by its host: they may call what is private there. */
    private final Map<String, List<String>> nests = new LinkedHashMap<>();

    /** Reads one jar and writes the other. */
    public static void main(String[] args) throws IOException {
        new LambdaClasses().run(Path.of(args[0]), Path.of(args[1]), args[2]);
    }

    private void run(Path from, Path to, String prefix) throws IOException {
        try (ZipFile in = new ZipFile(from.toFile());
                OutputStream file = Files.newOutputStream(to);
                ZipOutputStream out = new ZipOutputStream(file)) {
            for (Enumeration<? extends ZipEntry> all = in.entries(); all.hasMoreElements(); ) {
                ZipEntry entry = all.nextElement();
                if (isOwn(entry.getName(), prefix)) {
                    transform(in.getInputStream(entry).readAllBytes());
                }
            }
            nests.forEach((host, members) -> classes.put(host, withMembers(classes.get(host), members)));
            long time = 0;
            for (Enumeration<? extends ZipEntry> all = in.entries(); all.hasMoreElements(); ) {
                ZipEntry entry = all.nextElement();
                time = entry.getTime();
                byte[] own = isOwn(entry.getName(), prefix)
                        ? classes.remove(entry.getName().replace(".class", ""))
                        : null;
                write(out, entry.getName(), time, own != null ? own : in.getInputStream(entry).readAllBytes());
            }
            for (Map.Entry<String, byte[]> made : classes.entrySet()) {
                write(out, made.getKey() + ".class", time, made.getValue());
            }
        }
    }

    private static boolean isOwn(String name, String prefix) {
        return name.startsWith(prefix) && name.endsWith(".class");
    }

    private static void write(ZipOutputStream out, String name, long time, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(time);
        out.putNextEntry(entry);
        out.write(bytes);
        out.closeEntry();
    }

    private static byte[] withMembers(byte[] host, List<String> members) {
        ClassReader reader = new ClassReader(host);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(
                new ClassVisitor(Opcodes.ASM9, writer) {
                    @Override
                    public void visitEnd() {
                        members.forEach(this::visitNestMember);
                        super.visitEnd();
                    }
                },
                0);
        return writer.toByteArray();
    }

    private void transform(byte[] bytes) {
        ClassReader reader = new ClassReader(bytes);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(new Calls(writer), 0);
        classes.put(reader.getClassName(), writer.toByteArray());
    }

    /** Replaces every place of a class where a lambda is made or a record compared. */
    private final class Calls extends ClassVisitor {
        private String name;
        private String host;
        private int count;

        Calls(ClassVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public void visit(int version, int access, String own, String signature, String parent, String[] interfaces) {
            name = own;
            host = own;
            super.visit(version, access, own, signature, parent, interfaces);
        }

        @Override
        public void visitNestHost(String of) {
            host = of;
            super.visitNestHost(of);
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String method, String descriptor, String signature, String[] exceptions) {
            MethodVisitor next = super.visitMethod(access, method, descriptor, signature, exceptions);
            return new MethodVisitor(Opcodes.ASM9, next) {
                private int wanted;

                @Override
                public void visitMaxs(int stack, int locals) {
                    super.visitMaxs(Math.max(stack, wanted), locals);
                }

                @Override
                public void visitInvokeDynamicInsn(String sam, String factory, Handle bootstrap, Object... of) {
                    if (bootstrap.getOwner().equals(OF_RECORDS) && !sam.equals("toString")) {
                        wanted = RecordMethod.STACK;
                        new RecordMethod(this, name, of).write(sam);
                        return;
                    }
                    boolean plain = bootstrap.getOwner().equals(METAFACTORY)
                            && bootstrap.getName().equals("metafactory");
                    if (!plain) {
                        super.visitInvokeDynamicInsn(sam, factory, bootstrap, of);
                        return;
                    }
                    String made = name + "$$L" + count++;
                    nests.computeIfAbsent(host, h -> new ArrayList<>()).add(made);
                    classes.put(made, new Lambda(made, host, sam, factory, of).bytes());
                    if (Type.getArgumentTypes(factory).length == 0) {
                        super.visitFieldInsn(
                                Opcodes.GETSTATIC, made, ONLY, Type.getReturnType(factory).getDescriptor());
                    } else {
                        super.visitMethodInsn(Opcodes.INVOKESTATIC, made, MAKE, factory, false);
                    }
                }
            };
        }
    }

    /** The class of one lambda: what it holds is a field each; one that holds nothing is made once. */
    private static final class Lambda {
        private final ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        private final String made;
        private final Type[] held;

        Lambda(String made, String host, String sam, String factory, Object... of) {
            this.made = made;
            held = Type.getArgumentTypes(factory);
            Type face = Type.getReturnType(factory);
            int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
            out.visit(Opcodes.V17, access, made, null, OBJECT, new String[] {face.getInternalName()});
            out.visitNestHost(host);
            constructor();
            if (held.length == 0) {
                only(face.getDescriptor());
            } else {
                make(factory);
            }
            answer(sam, (Type) of[0], (Handle) of[1], (Type) of[2]);
            out.visitEnd();
        }

        byte[] bytes() {
            return out.toByteArray();
        }

        private void constructor() {
            MethodVisitor m = out.visitMethod(
                    Opcodes.ACC_PRIVATE, "<init>", Type.getMethodDescriptor(Type.VOID_TYPE, held), null, null);
            m.visitVarInsn(Opcodes.ALOAD, 0);
            m.visitMethodInsn(Opcodes.INVOKESPECIAL, OBJECT, "<init>", "()V", false);
            int at = 1;
            for (int k = 0; k < held.length; k++) {
                int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL;
                out.visitField(access, "h" + k, held[k].getDescriptor(), null, null).visitEnd();
                m.visitVarInsn(Opcodes.ALOAD, 0);
                m.visitVarInsn(held[k].getOpcode(Opcodes.ILOAD), at);
                m.visitFieldInsn(Opcodes.PUTFIELD, made, "h" + k, held[k].getDescriptor());
                at += held[k].getSize();
            }
            end(m, Type.VOID_TYPE);
        }

        private void only(String descriptor) {
            out.visitField(Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONLY, descriptor, null, null)
                    .visitEnd();
            MethodVisitor m = out.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
            m.visitTypeInsn(Opcodes.NEW, made);
            m.visitInsn(Opcodes.DUP);
            m.visitMethodInsn(Opcodes.INVOKESPECIAL, made, "<init>", "()V", false);
            m.visitFieldInsn(Opcodes.PUTSTATIC, made, ONLY, descriptor);
            end(m, Type.VOID_TYPE);
        }

        private void make(String factory) {
            MethodVisitor m = out.visitMethod(Opcodes.ACC_STATIC, MAKE, factory, null, null);
            m.visitTypeInsn(Opcodes.NEW, made);
            m.visitInsn(Opcodes.DUP);
            int at = 0;
            for (Type each : held) {
                m.visitVarInsn(each.getOpcode(Opcodes.ILOAD), at);
                at += each.getSize();
            }
            String descriptor = Type.getMethodDescriptor(Type.VOID_TYPE, held);
            m.visitMethodInsn(Opcodes.INVOKESPECIAL, made, "<init>", descriptor, false);
            end(m, Type.getReturnType(factory));
        }

        /** The method of the interface: calls {@code code} with what is held and what is given, each as the type that it takes. */
        private void answer(String sam, Type erased, Handle code, Type exact) {
            MethodVisitor m = out.visitMethod(Opcodes.ACC_PUBLIC, sam, erased.getDescriptor(), null, null);
            boolean isNew = code.getTag() == Opcodes.H_NEWINVOKESPECIAL;
            boolean isStatic = code.getTag() == Opcodes.H_INVOKESTATIC;
            Type owner = Type.getObjectType(code.getOwner());
            List<Type> wanted = new ArrayList<>();
            if (isNew) {
                m.visitTypeInsn(Opcodes.NEW, code.getOwner());
                m.visitInsn(Opcodes.DUP);
            } else if (!isStatic) {
                wanted.add(owner);
            }
            wanted.addAll(List.of(Type.getArgumentTypes(code.getDesc())));
            int next = 0;
            for (int k = 0; k < held.length; k++) {
                m.visitVarInsn(Opcodes.ALOAD, 0);
                m.visitFieldInsn(Opcodes.GETFIELD, made, "h" + k, held[k].getDescriptor());
                Conversion.convert(m, held[k], wanted.get(next++));
            }
            int at = 1;
            Type[] given = erased.getArgumentTypes();
            for (int k = 0; k < given.length; k++) {
                m.visitVarInsn(given[k].getOpcode(Opcodes.ILOAD), at);
                at += given[k].getSize();
                Conversion.convert(m, given[k], exact.getArgumentTypes()[k]);
                Conversion.convert(m, exact.getArgumentTypes()[k], wanted.get(next++));
            }
            m.visitMethodInsn(opcode(code), code.getOwner(), code.getName(), code.getDesc(), code.isInterface());
            Type found = isNew ? owner : Type.getReturnType(code.getDesc());
            if (erased.getReturnType() == Type.VOID_TYPE) {
                if (found != Type.VOID_TYPE) {
                    m.visitInsn(found.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
                }
            } else {
                Conversion.convert(m, found, exact.getReturnType());
                Conversion.convert(m, exact.getReturnType(), erased.getReturnType());
            }
            end(m, erased.getReturnType());
        }

        /** What is private is called as if it were not: both are of one nest. */
        private static int opcode(Handle code) {
            return switch (code.getTag()) {
                case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
                case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
                default -> code.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
            };
        }

        private static void end(MethodVisitor m, Type returned) {
            m.visitInsn(returned.getOpcode(Opcodes.IRETURN));
            m.visitMaxs(0, 0);
            m.visitEnd();
        }
    }

    /** The code of {@code equals} or {@code hashCode} of a record; gives what Java's own would give. */
    private static final class RecordMethod {
        /** Two numbers of double length. */
        static final int STACK = 4;

        private final MethodVisitor m;
        private final String record;
        private final Object[] of;

        /** Components are the third and all later ones of {@code of}, as fields to read. */
        RecordMethod(MethodVisitor m, String record, Object... of) {
            this.m = m;
            this.record = record;
            this.of = of;
        }

        /** Takes what the method was called with off the stack and leaves the result there. */
        void write(String method) {
            if (method.equals("equals")) {
                m.visitInsn(Opcodes.POP2);
                writeEquals();
            } else {
                m.visitInsn(Opcodes.POP);
                writeHashCode();
            }
        }

        private void writeEquals() {
            Label differs = new Label();
            Label end = new Label();
            m.visitVarInsn(Opcodes.ALOAD, 1);
            m.visitTypeInsn(Opcodes.INSTANCEOF, record);
            m.visitJumpInsn(Opcodes.IFEQ, differs);
            for (int k = 2; k < of.length; k++) {
                Type type = field(k, 0);
                field(k, 1);
                if (type.getSort() >= Type.ARRAY) {
                    call("java/util/Objects", "equals", "(Ljava/lang/Object;Ljava/lang/Object;)Z");
                    m.visitJumpInsn(Opcodes.IFEQ, differs);
                } else {
                    Type box = Conversion.box(type);
                    call(box.getInternalName(), "compare", Type.getMethodDescriptor(Type.INT_TYPE, type, type));
                    m.visitJumpInsn(Opcodes.IFNE, differs);
                }
            }
            m.visitInsn(Opcodes.ICONST_1);
            m.visitJumpInsn(Opcodes.GOTO, end);
            m.visitLabel(differs);
            m.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
            m.visitInsn(Opcodes.ICONST_0);
            m.visitLabel(end);
            m.visitFrame(Opcodes.F_SAME1, 0, null, 1, new Object[] {Opcodes.INTEGER});
        }

        private void writeHashCode() {
            m.visitInsn(Opcodes.ICONST_0);
            for (int k = 2; k < of.length; k++) {
                m.visitIntInsn(Opcodes.BIPUSH, 31);
                m.visitInsn(Opcodes.IMUL);
                Type type = field(k, 0);
                if (type.getSort() >= Type.ARRAY) {
                    call("java/util/Objects", "hashCode", "(Ljava/lang/Object;)I");
                } else {
                    Type box = Conversion.box(type);
                    call(box.getInternalName(), "hashCode", Type.getMethodDescriptor(Type.INT_TYPE, type));
                }
                m.visitInsn(Opcodes.IADD);
            }
        }

        /** Puts a component of the record in that local variable onto the stack. */
        private Type field(int k, int variable) {
            Handle field = (Handle) of[k];
            m.visitVarInsn(Opcodes.ALOAD, variable);
            if (variable > 0) {
                m.visitTypeInsn(Opcodes.CHECKCAST, record);
            }
            m.visitFieldInsn(Opcodes.GETFIELD, record, field.getName(), field.getDesc());
            return Type.getType(field.getDesc());
        }

        private void call(String owner, String method, String descriptor) {
            m.visitMethodInsn(Opcodes.INVOKESTATIC, owner, method, descriptor, false);
        }
    }

    /** The conversions that the language makes by itself: casts, boxes, and wider numbers. */
    private static final class Conversion {
        private static final String ORDER = "IJFD";

        static void convert(MethodVisitor m, Type from, Type to) {
            boolean fromNumber = isPrimitive(from);
            boolean toNumber = isPrimitive(to);
            if (from.equals(to)) {
                return;
            }
            if (fromNumber && toNumber) {
                widen(m, from, to);
            } else if (fromNumber) {
                Type box = box(from);
                m.visitMethodInsn(
                        Opcodes.INVOKESTATIC,
                        box.getInternalName(),
                        "valueOf",
                        Type.getMethodDescriptor(box, from),
                        false);
            } else if (toNumber) {
                Type inside = unboxed(from) == null ? to : unboxed(from);
                Type box = box(inside);
                if (!box.equals(from)) {
                    m.visitTypeInsn(Opcodes.CHECKCAST, box.getInternalName());
                }
                m.visitMethodInsn(
                        Opcodes.INVOKEVIRTUAL,
                        box.getInternalName(),
                        inside.getClassName() + "Value",
                        Type.getMethodDescriptor(inside),
                        false);
                widen(m, inside, to);
            } else if (!to.getInternalName().equals(OBJECT)) {
                m.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
            }
        }

        private static boolean isPrimitive(Type type) {
            return type.getSort() < Type.ARRAY;
        }

        private static void widen(MethodVisitor m, Type from, Type to) {
            int a = Math.max(0, ORDER.indexOf(from.getDescriptor()));
            int b = Math.max(0, ORDER.indexOf(to.getDescriptor()));
            int[][] codes = {
                {0, Opcodes.I2L, Opcodes.I2F, Opcodes.I2D},
                {0, 0, Opcodes.L2F, Opcodes.L2D},
                {0, 0, 0, Opcodes.F2D},
                {0, 0, 0, 0}
            };
            if (codes[a][b] != 0) {
                m.visitInsn(codes[a][b]);
            }
        }

        private static Type box(Type primitive) {
            return switch (primitive.getSort()) {
                case Type.BOOLEAN -> Type.getType(Boolean.class);
                case Type.CHAR -> Type.getType(Character.class);
                case Type.BYTE -> Type.getType(Byte.class);
                case Type.SHORT -> Type.getType(Short.class);
                case Type.INT -> Type.getType(Integer.class);
                case Type.LONG -> Type.getType(Long.class);
                case Type.FLOAT -> Type.getType(Float.class);
                default -> Type.getType(Double.class);
            };
        }

        private static Type unboxed(Type box) {
            for (Type each : new Type[] {
                Type.BOOLEAN_TYPE, Type.CHAR_TYPE, Type.BYTE_TYPE, Type.SHORT_TYPE,
                Type.INT_TYPE, Type.LONG_TYPE, Type.FLOAT_TYPE, Type.DOUBLE_TYPE
            }) {
                if (box(each).equals(box)) {
                    return each;
                }
            }
            return null;
        }
    }
}
