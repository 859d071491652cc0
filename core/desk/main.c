#include "desk.h"

int main(int argc, char **argv)
{
    return desk_main(argc, argv);
}
