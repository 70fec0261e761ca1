"""What is said in public: a result put into words. Nothing is counted here."""
