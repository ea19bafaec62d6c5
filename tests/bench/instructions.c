// A plugin of QEMU 7.2 that counts the instructions that were emulated and prints them at the end. What it needs of the
// interface is declared here, because the header is in no package of Debian 12 (qemu.org, docs/devel/tcg-plugins.rst).
#include <inttypes.h>
#include <stddef.h>
#include <stdio.h>

typedef uint64_t Id;
struct qemu_plugin_tb;
struct qemu_info_t;
enum Op { ADD_U64 };

void qemu_plugin_register_vcpu_tb_trans_cb(Id id, void (*each)(Id, struct qemu_plugin_tb*));
size_t qemu_plugin_tb_n_insns(const struct qemu_plugin_tb* block);
void qemu_plugin_register_vcpu_tb_exec_inline(struct qemu_plugin_tb* block, enum Op op, void* to, uint64_t value);
void qemu_plugin_register_atexit_cb(Id id, void (*end)(Id, void*), void* context);

#define EXPORT __attribute__((visibility("default")))
EXPORT int qemu_plugin_version = 1;

static uint64_t count;

static void translated(Id id, struct qemu_plugin_tb* block)
{
    (void)id;
    qemu_plugin_register_vcpu_tb_exec_inline(block, ADD_U64, &count, qemu_plugin_tb_n_insns(block));
}

static void ended(Id id, void* context)
{
    (void)id;
    (void)context;
    fprintf(stderr, "instructions %" PRIu64 "\n", count);
}

EXPORT int qemu_plugin_install(Id id, const struct qemu_info_t* info, int argc, char** argv)
{
    (void)info;
    (void)argc;
    (void)argv;
    qemu_plugin_register_vcpu_tb_trans_cb(id, translated);
    qemu_plugin_register_atexit_cb(id, ended, NULL);
    return 0;
}
