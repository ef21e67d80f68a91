/** Media types of the JDF specification. */
export const JMF_TYPE = 'application/vnd.cip4-jmf+xml';
export const JDF_TYPE = 'application/vnd.cip4-jdf+xml';
