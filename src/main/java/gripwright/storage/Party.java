package gripwright.storage;

import java.util.UUID;

/**
 * One window at work on files, as others are told of it.
 *
 * @param owner unique for this window
 * @param computer the name of its computer
 * @param process the process on that computer
 */
record Party(String owner, String computer, long process) {

    /** A window of this process. */
    static Party ofThisProcess() {
        return new Party(UUID.randomUUID().toString(), computerName(), ProcessHandle.current().pid());
    }

    /** The name the system goes by; asking the network for it could take seconds. */
    private static String computerName() {
        for (String variable : new String[] {"COMPUTERNAME", "HOSTNAME"}) {
            String name = System.getenv(variable);
            if (name != null && !name.isBlank()) {
                return name;
            }
        }
        try {
            return java.nio.file.Files.readString(java.nio.file.Path.of("/etc/hostname")).strip();
        } catch (java.io.IOException e) {
            return "this computer";
        }
    }

    /** Whether the process of this window on this computer has ended; false for other computers. */
    boolean hasEnded(String hereComputer) {
        return computer.equals(hereComputer) && ProcessHandle.of(process).filter(ProcessHandle::isAlive).isEmpty();
    }
}
