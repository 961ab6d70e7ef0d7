package sheathwright.repl.shell;

import java.util.HashSet;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * The class of a snippet, changed before it is loaded: calls that would end the program end the
 * line, and every turn of a loop asks whether the line was stopped.
 */
final class TamedClass extends ClassVisitor {

  /** The newest that the library knows. */
  private static final int API = Opcodes.ASM9;

  private static final String EXITS = Type.getInternalName(Exits.class);
  private static final String LOOKUP = "java/lang/invoke/MethodHandles$Lookup";
  private static final Set<String> LOOK_UPS = Set.of("findStatic", "findVirtual");

  private TamedClass(ClassVisitor next) {
    super(API, next);
  }

  static byte[] of(byte[] code) {
    ClassReader reader = new ClassReader(code);
    ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
    reader.accept(new TamedClass(writer), 0);
    return writer.toByteArray();
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String name, String descriptor, String signature, String[] exceptions) {
    return new TamedMethod(super.visitMethod(access, name, descriptor, signature, exceptions));
  }

  private static boolean ends(String owner, String name, String descriptor) {
    return descriptor.equals("(I)V")
        && (owner.equals("java/lang/System") && name.equals("exit")
            || owner.equals("java/lang/Runtime") && Set.of("exit", "halt").contains(name));
  }

  /** What is called in place of a call that would end the program. */
  private static String descriptor(String owner) {
    return owner.equals("java/lang/Runtime") ? "(Ljava/lang/Runtime;I)V" : "(I)V";
  }

  private static final class TamedMethod extends MethodVisitor {

    private final Set<Label> passed = new HashSet<>();

    TamedMethod(MethodVisitor next) {
      super(API, next);
    }

    @Override
    public void visitCode() {
      super.visitCode();
      check();
    }

    @Override
    public void visitLabel(Label label) {
      passed.add(label);
      super.visitLabel(label);
    }

    @Override
    public void visitJumpInsn(int opcode, Label target) {
      if (passed.contains(target)) {
        check();
      }
      super.visitJumpInsn(opcode, target);
    }

    private void check() {
      super.visitMethodInsn(
          Opcodes.INVOKESTATIC, Type.getInternalName(LineThread.class), "check", "()V", false);
    }

    @Override
    public void visitMethodInsn(
        int opcode, String owner, String name, String descriptor, boolean isInterface) {
      if (ends(owner, name, descriptor)) {
        super.visitMethodInsn(Opcodes.INVOKESTATIC, EXITS, "ended", descriptor(owner), false);
      } else if (owner.equals(LOOKUP) && LOOK_UPS.contains(name)) {
        String withLookup = descriptor.replace("(", "(L" + LOOKUP + ";");
        super.visitMethodInsn(Opcodes.INVOKESTATIC, EXITS, name, withLookup, false);
      } else {
        super.visitMethodInsn(opcode, owner, name, descriptor, isInterface);
      }
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String descriptor, Handle bootstrap, Object... arguments) {
      Object[] tamed = arguments.clone();
      for (int i = 0; i < tamed.length; i++) {
        if (tamed[i] instanceof Handle handle
            && ends(handle.getOwner(), handle.getName(), handle.getDesc())) {
          tamed[i] =
              new Handle(
                  Opcodes.H_INVOKESTATIC, EXITS, "ended", descriptor(handle.getOwner()), false);
        }
      }
      super.visitInvokeDynamicInsn(name, descriptor, bootstrap, tamed);
    }
  }
}
