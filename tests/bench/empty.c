/* The cost of starting at all: a program that does nothing, linked to the libraries of ours. */
int main(void)
{
    return 0;
}
